// Bundles the five programs from the same sources into dist/.
import { mkdirSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';

const common = {
  bundle: true,
  target: 'es2023',
  logLevel: 'warning',
  sourcemap: process.argv.includes('--sourcemap'),
};
const node = { ...common, platform: 'node', target: 'node20' };
const browser = { ...common, platform: 'browser' };

await Promise.all([
  build({
    ...node,
    format: 'cjs',
    entryPoints: ['client/node/main.ts'],
    outfile: 'dist/client-node.cjs',
    external: ['vscode'],
  }),
  build({
    ...browser,
    format: 'cjs',
    entryPoints: ['client/browser/main.ts'],
    outfile: 'dist/client-browser.js',
    external: ['vscode'],
  }),
  build({
    ...node,
    format: 'cjs',
    entryPoints: ['server/node/main.ts'],
    outfile: 'dist/server-node-main.cjs',
  }),
  build({
    ...browser,
    format: 'iife',
    entryPoints: ['server/browser/main.ts'],
    outfile: 'dist/server-browser.js',
  }),
  build({
    ...node,
    format: 'cjs',
    entryPoints: ['server/node/cli.ts'],
    outfile: 'dist/cli.js',
    banner: {
      js: "#!/usr/bin/env node\nconst bundleUrl = require('node:url').pathToFileURL(__filename).href;",
    },
    define: { 'import.meta.url': 'bundleUrl' },
  }),
]);

// What must be said before the server is loaded: compiled code is kept between starts, and the heap grows in small
// steps, which halves the memory while somebody types. Each of its many small tidyings is done in one thread.
mkdirSync('dist', { recursive: true });
writeFileSync(
  'dist/server-node.cjs',
  `const v8 = require('node:v8');
v8.setFlagsFromString('--semi-space-growth-factor=1');
v8.setFlagsFromString('--heap-growing-percent=50');
v8.setFlagsFromString('--no-parallel-scavenge');
require('node:module').enableCompileCache?.();
require('./server-node-main.cjs');
`,
);
