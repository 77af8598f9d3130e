import { fileURLToPath } from 'node:url';
import { readSchemas } from '../../src/generate/schema-files.ts';
import type { Schema, SchemaFile } from '../../src/shape/schema.ts';

export const files: readonly SchemaFile[] = readSchemas(
  fileURLToPath(new URL('../../schema', import.meta.url)),
);

/** A part of a schema file, with where it stands. */
export interface Part {
  readonly file: string;
  /** A JSON Pointer in the file: `/$defs/rule/properties/when`. */
  readonly pointer: string;
  readonly schema: Schema;
}

/** Every part of a schema file that is itself a schema. */
function* partsOf(file: string, schema: Schema, pointer = ''): Generator<Part> {
  yield { file, pointer, schema };
  for (const group of ['properties', '$defs'] as const) {
    for (const [key, part] of Object.entries(schema[group] ?? {}))
      yield* partsOf(file, part, `${pointer}/${group}/${key}`);
  }
  for (const keyword of ['items', 'propertyNames', 'additionalProperties'] as const) {
    const part = schema[keyword];
    if (typeof part === 'object') yield* partsOf(file, part, `${pointer}/${keyword}`);
  }
}

export const parts: readonly Part[] = files.flatMap(({ file, schema }) => [...partsOf(file, schema)]);

export const placeOf = ({ file, pointer }: Part): string => `${file}#${pointer}`;
