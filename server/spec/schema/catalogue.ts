import * as z from 'zod';
import { besideKinds } from '../beside-model.ts';
import { stackKinds } from '../model.ts';
import { axleSchema, clampSchema, dutySchema } from './axle.ts';
import { besideSchemas } from './beside.ts';
import {
  cupSchema,
  flangeSchema,
  housingSchemas,
  retainingRingSchema,
  seatSchema,
  seatSleeveSchema,
} from './housing.ts';
import { addedSchema, hubSchema, variantSchema } from './hub.ts';
import type { KeyInfo, SectionId, ValueType } from './key-info.ts';
import { partSchemas } from './part.ts';
import { wheelSchemas } from './wheel.ts';
import {
  defaultsSchema,
  driverSchema,
  houseBearingSchema,
  materialSchema,
  stockSchema,
  workshopSchema,
} from './workshop.ts';

type SectionSchema = z.ZodObject<z.core.$ZodShape>;

/** The schema of every section with keys of its own; a section that maps names has none. */
const schemas: ReadonlyMap<SectionId, SectionSchema> = new Map<SectionId, SectionSchema>([
  ['hub', hubSchema],
  ...stackKinds.map((kind): [SectionId, SectionSchema] => [`part:${kind}`, partSchemas[kind]]),
  ...besideKinds.map((kind): [SectionId, SectionSchema] => [`beside:${kind}`, besideSchemas[kind]]),
  ['housing:shell', housingSchemas.shell],
  ['housing:freehub', housingSchemas.freehub],
  ['seat', seatSchema],
  ['retaining-ring', retainingRingSchema],
  ['seat-sleeve', seatSleeveSchema],
  ['flange', flangeSchema],
  ['cup', cupSchema],
  ['axle', axleSchema],
  ['clamp', clampSchema],
  ['duty', dutySchema],
  ['variant', variantSchema],
  ['added', addedSchema],
  ['workshop', workshopSchema],
  ['workshop:bearing', houseBearingSchema],
  ['workshop:material', materialSchema],
  ['workshop:stock', stockSchema],
  ['workshop:driver', driverSchema],
  ['workshop:defaults', defaultsSchema],
  ...(Object.entries(wheelSchemas) as [SectionId, SectionSchema][]),
]);

/** A key as the readers use it: what it means and how its value is read. */
export interface KeyEntry {
  readonly info: KeyInfo;
  readonly schema: z.ZodType;
}

const entries = new Map<SectionId, ReadonlyMap<string, KeyEntry>>();
const infos = new Map<SectionId, readonly KeyInfo[]>();
for (const [section, schema] of schemas) {
  const keys = new Map(
    Object.entries(schema.shape).map(([key, of]) => [key, keyEntry(key, of as z.ZodType)]),
  );
  entries.set(section, keys);
  infos.set(
    section,
    [...keys.values()].map((entry) => entry.info),
  );
}
const none: ReadonlyMap<string, KeyEntry> = new Map();

/** The keys a section takes, in the order they are best written; empty for a section that maps names. */
export function sectionKeys(section: SectionId): readonly KeyInfo[] {
  return infos.get(section) ?? [];
}

/** The zod schema of a section, for export. */
export function sectionSchema(section: SectionId): SectionSchema | null {
  return schemas.get(section) ?? null;
}

export function keyEntries(section: SectionId): ReadonlyMap<string, KeyEntry> {
  return entries.get(section) ?? none;
}

/** Every section that takes a key of this name. */
export function sectionsWith(key: string): readonly SectionId[] {
  return [...entries].filter(([, keys]) => keys.has(key)).map(([section]) => section);
}

function keyEntry(key: string, of: z.ZodType): KeyEntry {
  const optional = of instanceof z.ZodOptional;
  const schema = (optional ? of.unwrap() : of) as z.ZodType;
  const meta = schema.meta() ?? {};
  const info: KeyInfo = {
    key,
    title: meta.title ?? key,
    description: meta.description ?? '',
    type: (meta['valueType'] as ValueType | undefined) ?? 'text',
    required: !optional,
    choices: (meta['choices'] as readonly string[] | undefined) ?? null,
    examples: (meta['examples'] as readonly string[] | undefined) ?? [],
    section: (meta['section'] as SectionId | undefined) ?? null,
  };
  return { info, schema };
}

/** The keys of all sections. */
export function allKeys(): Iterable<string> {
  return [...entries.values()].flatMap((keys) => [...keys.keys()]);
}
