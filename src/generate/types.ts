import { compile } from 'json-schema-to-typescript';
import { follow, isOtherName } from './schema-files.ts';
import { readOnly } from './read-only.ts';
import type { Schema, SchemaFile } from '../shape/schema.ts';

/** The name of the type of a definition: its title, else its own name in capitals. `time_of_day` is `TimeOfDay`. */
export function typeName(definition: string | null, schema: Schema): string {
  const name = schema.title ?? definition ?? '';
  return name.replace(/(?:^|_)([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

/** The types of one file, in its order, and the names that they use from elsewhere. */
export interface Types {
  readonly text: string;
  readonly own: readonly string[];
  readonly used: readonly string[];
}

/** One type for the root and one for each definition of a schema; a `$ref` becomes the name of the type. */
export async function typesOf(files: readonly SchemaFile[], file: SchemaFile): Promise<Types> {
  const used = new Set<string>();
  const own: string[] = [];
  const texts: string[] = [];
  const definitions: [string | null, Schema][] = [
    [null, file.schema],
    ...Object.entries(file.schema.$defs ?? {}),
  ];
  for (const [definition, schema] of definitions) {
    if (isOtherName(schema)) continue;
    const name = typeName(definition, schema);
    if (own.includes(name)) throw new Error(`${file.file}: two definitions make the type ${name}`);
    own.push(name);
    texts.push(readOnly(await compile(prepared(files, file, schema, used) as object, name, options)));
  }
  return { text: texts.join('\n'), own, used: [...used].filter((name) => !own.includes(name)).sort() };
}

const options = { bannerComment: '', additionalProperties: false, format: false, unknownAny: true } as const;

/** A schema in which every `$ref` stands as the name of a type, and lengths of lists only where they are fixed. */
function prepared(
  files: readonly SchemaFile[],
  file: SchemaFile,
  schema: Schema,
  used: Set<string>,
): unknown {
  const deeper = (part: Schema): unknown => prepared(files, file, part, used);
  const { description, $ref, minItems, maxItems } = schema;
  if ($ref !== undefined) {
    const target = follow(files, file, $ref);
    const tsType = typeName(target.definition, target.schema);
    used.add(tsType);
    return { description, tsType };
  }
  const { title, type, required, additionalProperties: others } = schema;
  return {
    ...given({ title, description, type, required, const: schema.const, enum: schema.enum }),
    ...(minItems === maxItems ? given({ minItems, maxItems }) : {}),
    ...(schema.properties ? { properties: mapped(schema.properties, deeper) } : {}),
    ...(schema.items ? { items: deeper(schema.items) } : {}),
    ...given({ additionalProperties: typeof others === 'object' ? deeper(others) : others }),
  };
}

const given = (parts: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined));

const mapped = (parts: Readonly<Record<string, Schema>>, change: (part: Schema) => unknown): object =>
  Object.fromEntries(Object.entries(parts).map(([key, part]) => [key, change(part)]));
