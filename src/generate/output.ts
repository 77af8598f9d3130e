import type { SchemaFile } from '../shape/schema.ts';

/** What is generated from. */
export interface Inputs {
  readonly schemas: readonly SchemaFile[];
  /** The text of `schema/vital_signs.yaml`. */
  readonly vitalSigns: string;
}

/** One generated file. */
export interface Output {
  /** From the project's root. */
  readonly path: string;
  /** The whole text, before it is formatted. The same inputs give the same text. */
  readonly make: (inputs: Inputs) => Promise<string> | string;
}

/** The first line of a generated TypeScript or JavaScript file. */
export const banner = (from: string): string =>
  `// Generated from ${from}; do not edit. npm run generate\n\n`;

/** The first line of a generated page. */
export const pageBanner = (from: string): string =>
  `<!-- Generated from ${from}; do not edit. npm run generate -->\n`;

/** Text in a cell of a table: a stroke would end the cell. */
export const markdownText = (text: string): string => text.replaceAll('|', '\\|');

/** A schema by its name; one that is not there is a fault of the project. */
export function schemaNamed(inputs: Inputs, name: string): SchemaFile {
  const file = inputs.schemas.find((each) => each.name === name);
  if (!file) throw new Error(`schema/${name}.schema.json is missing`);
  return file;
}
