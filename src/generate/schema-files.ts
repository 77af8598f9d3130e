import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Schema, SchemaFile } from '../shape/schema.ts';

const ending = '.schema.json';

/** Every schema of a folder, by name. The folder is listed, so that a new schema needs no word here. */
export function readSchemas(folder: string): readonly SchemaFile[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .sort()
    .map((file) => {
      const schema = JSON.parse(readFileSync(join(folder, file), 'utf8')) as Schema;
      if (schema.$id !== file) throw new Error(`${file}: its $id is "${schema.$id}", not its own name`);
      return { name: file.slice(0, -ending.length), file, schema };
    });
}

/** Where a `$ref` leads: the file, and the name of the definition there; null for the file's root. */
export interface Target {
  readonly file: SchemaFile;
  readonly definition: string | null;
  readonly schema: Schema;
}

/** Follows a `$ref` of a file. A definition that is nothing but a `$ref` is another name for the same thing, and is followed. */
export function follow(files: readonly SchemaFile[], from: SchemaFile, ref: string): Target {
  const [fileName = '', pointer = ''] = ref.split('#');
  const file = fileName === '' ? from : files.find((each) => each.file === fileName);
  const definition = pointer === '' ? null : pointer.replace('/$defs/', '');
  const schema = definition === null ? file?.schema : file?.schema.$defs?.[definition];
  if (!file || !schema) throw new Error(`${from.file}: "${ref}" leads nowhere`);
  if (isOtherName(schema)) return follow(files, file, schema.$ref);
  return { file, definition, schema };
}

/** Whether a definition only gives another one a shorter name. */
export const isOtherName = (schema: Schema): schema is Schema & { readonly $ref: string } =>
  schema.$ref !== undefined && Object.keys(schema).length === 1;
