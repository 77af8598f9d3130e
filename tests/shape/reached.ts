import type { Path } from '../../src/problems/place.ts';
import { schemaOf, validatorOf, type Kind } from '../../src/shape/files.ts';
import type { Schema, TypeName } from '../../src/shape/schema.ts';
import { resolved, type Stated } from '../../src/shape/schema-at.ts';

/** A place that the schemas state something about, with a whole file, right in every way, in which something stands there. */
export interface Reached {
  readonly kind: Kind;
  readonly path: Path;
  readonly stated: Stated;
  readonly file: unknown;
}

/** A name that no schema states. */
const anyName = 'any_name';

/** Every place of a kind of file that is stated, each once: nothing that has been walked through is walked through again. */
export function reached(kind: Kind): readonly Reached[] {
  const places: Reached[] = [];
  const walked = new Set<Schema>();
  const start: Stated = resolved(schemaOf[kind], schemaOf[kind]);
  visit(start, [], [exampleOf(start, 'object'), made(start)].find(validatorOf[kind]));
  return places;

  function visit(stated: Stated, path: Path, file: unknown): void {
    if (!validatorOf[kind](file))
      throw new Error(`/${path.join('/')}: ${JSON.stringify(validatorOf[kind].errors)}`);
    places.push({ kind, path, stated, file });
    if (walked.has(stated.schema)) return;
    walked.add(stated.schema);
    for (const [step, own] of below(stated.schema)) {
      const next = resolved(own, stated.root);
      const isPosition = typeof step === 'number';
      const type = isPosition ? 'array' : 'object';
      const holder = isOf(valueAt(file, path), type) ? file : at(file, path, exampleOf(stated, type));
      const size = isPosition ? Math.max(1, stated.schema.minItems ?? 1) : 1;
      const value = anyExample(next);
      const filled = isPosition
        ? at(holder, path, Array<unknown>(size).fill(value))
        : at(holder, [...path, step], value);
      visit(next, [...path, step], filled);
    }
  }
}

/** The keys and positions under a schema, each with what is stated there. */
function below({
  properties = {},
  additionalProperties: others,
  items,
}: Schema): [string | number, Schema][] {
  const steps: [string | number, Schema][] = Object.entries(properties);
  if (typeof others === 'object') steps.push([anyName, others]);
  if (items) steps.push([0, items]);
  return steps;
}

/** The first example of what is stated, else a value of the first type that it may have. */
export function anyExample(stated: Stated): unknown {
  const { own, schema } = stated;
  const [example] = [...(own.examples ?? []), ...(schema.examples ?? [])];
  if (Array.isArray(example)) return withEnough(example, schema);
  return example ?? exampleOf(stated, [schema.type ?? 'object'].flat()[0] ?? 'object');
}

/** Where no example is stated; each is checked to be right in its place. */
const plainest: Readonly<Record<Exclude<TypeName, 'object'>, unknown>> = {
  string: 'a_word',
  number: 1,
  integer: 1,
  boolean: true,
  null: null,
  array: [],
};

/** A value of a type that may stand where something is stated: an example, else one made of the examples of its parts. */
export function exampleOf(stated: Stated, type: TypeName): unknown {
  const { own, schema, root } = stated;
  const example = [...(own.examples ?? []), ...(schema.examples ?? [])].find((each) => isOf(each, type));
  if (Array.isArray(example)) return withEnough(example, schema);
  if (example !== undefined) return example;
  if (type === 'array' && schema.items) {
    const item = resolved(schema.items, root);
    return Array<unknown>(schema.minItems ?? 1).fill(anyExample(item));
  }
  if (type !== 'object') return plainest[type];
  return made(stated);
}

/** A group with the keys that it must have. */
function made({ schema, root }: Stated): unknown {
  return Object.fromEntries(
    (schema.required ?? []).map((key) => {
      const part = resolved(schema.properties?.[key] ?? {}, root);
      return [key, anyExample(part)];
    }),
  );
}

/** A list with as many items as there must be. */
function withEnough(items: readonly unknown[], { minItems = 0 }: Schema): unknown[] {
  return Array.from({ length: Math.max(items.length, minItems) }, (_, index) => items[index % items.length]);
}

export function isOf(value: unknown, type: TypeName): boolean {
  if (type === 'array') return Array.isArray(value);
  if (type === 'null') return value === null;
  if (type === 'object') return typeof value === 'object' && value !== null && !Array.isArray(value);
  if (type === 'integer') return Number.isInteger(value);
  return typeof value === type;
}

/** The same file with another value at a path. */
export function at(file: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(file))
    return file.map((item, index) => (index === step ? at(item, rest, value) : item) as unknown);
  const map = file as Record<string, unknown>;
  return { ...map, [step]: at(map[step], rest, value) };
}

/** What stands at a path of a file. */
export function valueAt(file: unknown, path: Path): unknown {
  return path.reduce<unknown>((part, step) => (part as Record<string | number, unknown>)[step], file);
}
