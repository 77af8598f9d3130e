/**
 * A JSON Schema (2020-12), or a part of one, in the subset that the language is stated in.
 *
 * There is no `oneOf` or `anyOf`, so each place in a file has exactly one schema: that of its key, its position or its name.
 */
export interface Schema {
  readonly $schema?: string;
  readonly $id?: string;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  /** The name of the type that is generated from it. */
  readonly title?: string;
  /** Written for a nurse: it is shown when the key is pointed at. */
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly type?: TypeName | readonly TypeName[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly propertyNames?: Schema;
  /** `false`, or the schema of what stands under any other key. */
  readonly additionalProperties?: boolean | Schema;
  readonly minProperties?: number;
  readonly maxProperties?: number;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
}

export type TypeName = 'string' | 'number' | 'integer' | 'boolean' | 'null' | 'array' | 'object';

/** One file of `schema/`. */
export interface SchemaFile {
  /** `protocol` of `protocol.schema.json`. */
  readonly name: string;
  /** `protocol.schema.json`. */
  readonly file: string;
  readonly schema: Schema;
}
