// The least a command can do with a folder of files: read, parse, one schema, one line for each file.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { floorSchema } from './floor-schema.ts';

const folder = process.argv[2] ?? '.';
for (const name of readdirSync(folder)) {
  if (!name.endsWith('.hub.yaml')) continue;
  const tree = parseDocument(readFileSync(join(folder, name), 'utf8'), { prettyErrors: false });
  const read = floorSchema.safeParse(tree.toJS());
  process.stdout.write(`${name}: ${read.success ? 'nothing found' : read.error.issues.length}\n`);
}
