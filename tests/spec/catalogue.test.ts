import { expect, test } from 'vitest';
import { z } from 'zod';
import { keyEntries, sectionKeys, sectionSchema } from '../../server/spec/schema/catalogue.ts';
import { sections } from './sections.ts';

test('every key says what it means, with an example that reads', () => {
  for (const section of sections) {
    for (const [key, { info, schema }] of keyEntries(section)) {
      const name = `${section} ${key}`;
      expect(info.description, name).toMatch(/^[A-Z].*[.]$/);
      expect(info.examples.length, name).toBeGreaterThan(0);
      if (info.section !== null) continue;
      for (const example of info.examples)
        expect(schema.safeParse(example).success, `${name}: ${example}`).toBe(true);
    }
  }
});

test('every choice is read, and nothing beside them', () => {
  for (const section of sections) {
    for (const [key, { info, schema }] of keyEntries(section)) {
      if (!info.choices) continue;
      for (const choice of info.choices)
        expect(schema.safeParse(choice).success, `${section} ${key} ${choice}`).toBe(true);
      expect(schema.safeParse('dunlin').success).toBe(false);
    }
  }
});

test('four keys make a hub', () => {
  const required = sectionKeys('hub').filter((info) => info.required);
  expect(required.map((info) => info.key)).toEqual(['hub', 'position', 'width', 'stack']);
});

test('a section exports as a JSON schema that knows its keys and takes no other', () => {
  for (const section of sections) {
    const schema = sectionSchema(section);
    if (!schema) continue;
    const json = z.toJSONSchema(schema, { io: 'input', target: 'draft-7' });
    expect(json.additionalProperties).toBe(false);
    expect(Object.keys(json.properties ?? {})).toEqual(sectionKeys(section).map((info) => info.key));
  }
});
