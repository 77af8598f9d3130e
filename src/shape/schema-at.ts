import type { Path } from '../problems/place.ts';
import { schemaOf, type Kind } from './files.ts';
import { schemas } from './schemas.ts';
import type { Schema } from './schema.ts';

/** What is stated about one place of a file. */
export interface Stated {
  /** As written at the place: its own description and examples stand here. */
  readonly own: Schema;
  /** Where `own` only names a definition, the definition; else `own` itself. */
  readonly schema: Schema;
  /** The name of the definition; null when there is none. */
  readonly definition: string | null;
  /** The schema file in which `schema` stands, and its other names are found. */
  readonly root: Schema;
}

// A file that people write may name a form that only the kit writes: a sealed edition names that of an outcome.
const roots: ReadonlyMap<string | undefined, Schema> = new Map(
  Object.values(schemas).map((schema) => [schema.$id, schema]),
);

/**
 * What is stated about a place: `schemaAt('protocol', ['rules', 0, 'level'])` is the definition of a name. There is always
 * at most one, as nothing an author types can be of two forms. Null where nothing can stand.
 */
export function schemaAt(kind: Kind, path: Path): Stated | null {
  let stated = resolved(schemaOf[kind], schemaOf[kind]);
  for (const step of path) {
    const next = below(stated.schema, step);
    if (!next) return null;
    stated = resolved(next, stated.root);
  }
  return stated;
}

/** The schema of what stands under a key or at a position. */
function below(
  { properties, additionalProperties: others, items }: Schema,
  step: string | number,
): Schema | null {
  if (typeof step === 'number') return items ?? null;
  if (properties && Object.hasOwn(properties, step)) return properties[step] ?? null;
  return typeof others === 'object' ? others : null;
}

/** Follows a `$ref` to the definition that it names. */
export function resolved(own: Schema, root: Schema): Stated {
  let stated: Stated = { own, schema: own, definition: null, root };
  while (stated.schema.$ref !== undefined) {
    const [file = '', pointer = ''] = stated.schema.$ref.split('#');
    const there = file === '' ? stated.root : roots.get(file);
    const definition = pointer === '' ? null : pointer.replace('/$defs/', '');
    const schema = definition === null ? there : there?.$defs?.[definition];
    if (!there || !schema) throw new Error(`The schemas name ${stated.schema.$ref}, which is not there`);
    stated = { own, schema, definition, root: there };
  }
  return stated;
}
