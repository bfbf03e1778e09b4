import { readFileSync } from 'node:fs';
import { enableCompileCache } from 'node:module';
import { commandLine } from './command-line.ts';

// Compiled code is kept between runs: the second start takes half the time.
enableCompileCache?.();

// A reader that closes early (`| head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const manifest: unknown = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
const version =
  typeof manifest === 'object' && manifest !== null && 'version' in manifest ? String(manifest.version) : '';

const { exit, out, err } = commandLine(process.argv.slice(2), process.cwd(), version);
if (err !== '') process.stderr.write(err);
if (out !== '') process.stdout.write(out);
process.exitCode = exit;
