import type { Path } from '../../src/problems/place.ts';
import type { Code } from '../../src/problems/catalogue.ts';
import type { TypeName } from '../../src/shape/schema.ts';
import { resolved } from '../../src/shape/schema-at.ts';
import { anyExample, at, exampleOf, isOf, valueAt, type Reached } from './reached.ts';

/** One mistake in a file that is otherwise right, and the problem that must be told. */
export interface Fault {
  readonly name: string;
  readonly file: unknown;
  readonly code: Code;
  readonly path: Path;
  readonly part: 'key' | 'value';
}

type Make = (reached: Reached) => readonly Fault[];

const values: Readonly<Record<TypeName, unknown>> = {
  string: 'Some words!',
  number: 7.5,
  integer: 7,
  boolean: true,
  null: null,
  array: [],
  object: {},
};

/** Every mistake that can be made at a place, from what is stated there. */
export function faultsAt(reached: Reached): readonly Fault[] {
  return makers.flatMap((make) => make(reached));
}

const fault = (
  { file }: Reached,
  name: string,
  code: Code,
  path: Path,
  value: unknown,
  part: Fault['part'] = 'value',
): Fault => ({
  name: `${name} at /${path.join('/')}`,
  file: at(file, path, value),
  code,
  path,
  // Where nothing or too little is written below a key, the key is marked.
  part: part === 'key' && typeof path.at(-1) === 'string' ? 'key' : 'value',
});

const typesAt = ({ stated: { schema } }: Reached): readonly TypeName[] =>
  schema.type === undefined ? [] : [schema.type].flat();

const wrongTypes: Make = (reached) => {
  const types = typesAt(reached);
  if (reached.path.length === 0) return [];
  return (Object.keys(values) as TypeName[])
    .filter((type) => !types.some((allowed) => isOf(values[type], allowed)))
    .map((type) =>
      type === 'null'
        ? fault(reached, 'nothing', 'value_missing', reached.path, null, 'key')
        : fault(reached, `a value of the type ${type}`, 'wrong_type', reached.path, values[type]),
    );
};

/** The file with a whole value of a type at the place, where the type can stand there. */
function withWhole(reached: Reached, type: TypeName): Reached | null {
  if (!typesAt(reached).includes(type)) return null;
  const { file, path, stated } = reached;
  const here = valueAt(file, path);
  return { ...reached, file: at(file, path, isOf(here, type) ? here : exampleOf(stated, type)) };
}

const missingKeys: Make = (reached) => {
  const whole = withWhole(reached, 'object');
  return (whole?.stated.schema.required ?? []).map((key) => {
    const rest = Object.entries(valueAt(whole?.file, reached.path) as object).filter(
      ([each]) => each !== key,
    );
    return fault(reached, `"${key}" missing`, 'key_missing', reached.path, Object.fromEntries(rest), 'key');
  });
};

const unknownKeys: Make = (reached) => {
  const whole = withWhole(reached, 'object');
  const { schema, root } = reached.stated;
  if (!whole) return [];
  const make = (name: string, code: Code, key: string, value: unknown): Fault =>
    fault(whole, name, code, [...reached.path, key], value, 'key');
  const found: Fault[] = [];
  if (schema.additionalProperties === false)
    found.push(make('an unknown key', 'key_unknown', 'nobodys_key', 1));
  if (schema.propertyNames && typeof schema.additionalProperties === 'object') {
    const part = resolved(schema.additionalProperties, root);
    const value = anyExample(part);
    found.push(make('a key that is no name', 'key_not_formed', 'No Name', value));
    found.push(make('a key that is too long', 'key_not_formed', 'a'.repeat(61), value));
  }
  return found;
};

const texts: Make = (reached) => {
  const { path, stated } = reached;
  const { minLength, maxLength, pattern, enum: choices } = stated.schema;
  if (!typesAt(reached).includes('string')) return [];
  const found: Fault[] = [];
  const isName = stated.definition === 'name';
  if (choices) found.push(fault(reached, 'an unknown word', 'word_unknown', path, 'no_such_word'));
  if (pattern !== undefined)
    found.push(
      fault(reached, 'a text of another form', isName ? 'name_not_formed' : 'text_not_formed', path, '!'),
    );
  if (minLength !== undefined)
    found.push(fault(reached, 'a text without words', 'text_without_words', path, ''));
  if (maxLength !== undefined && (pattern === undefined || isName)) {
    found.push(fault(reached, 'a text that is too long', 'text_too_long', path, 'a'.repeat(maxLength + 1)));
  }
  return found;
};

const numbers: Make = (reached) => {
  const { minimum, maximum, const: only } = reached.stated.schema;
  const found: Fault[] = [];
  if (minimum !== undefined)
    found.push(fault(reached, 'a number too low', 'number_too_low', reached.path, minimum - 1));
  if (maximum !== undefined)
    found.push(fault(reached, 'a number too high', 'number_too_high', reached.path, maximum + 1));
  const other = typeof only === 'boolean' ? !only : 77;
  if (only !== undefined) found.push(fault(reached, 'another value', 'word_unknown', reached.path, other));
  return found;
};

const lists: Make = (reached) => {
  const whole = withWhole(reached, 'array');
  const { minItems, maxItems } = reached.stated.schema;
  if (!whole) return [];
  const [item] = (valueAt(whole.file, reached.path) as unknown[]).concat(exampleOf(reached.stated, 'array'));
  const found: Fault[] = [];
  if (minItems !== undefined)
    found.push(
      fault(
        reached,
        'a list that is too short',
        'too_few',
        reached.path,
        Array<unknown>(minItems - 1).fill(item),
        'key',
      ),
    );
  if (maxItems !== undefined)
    found.push(
      fault(
        reached,
        'a list that is too long',
        'too_many',
        reached.path,
        Array<unknown>(maxItems + 1).fill(item),
        'key',
      ),
    );
  return found;
};

const groups: Make = (reached) => {
  const { minProperties, maxProperties, additionalProperties: others } = reached.stated.schema;
  const found: Fault[] = [];
  if (minProperties !== undefined)
    found.push(fault(reached, 'an empty group', 'too_few', reached.path, {}, 'key'));
  if (maxProperties !== undefined && typeof others === 'object') {
    const part = resolved(others, reached.stated.root);
    const value = anyExample(part);
    const many = Object.fromEntries(
      Array.from({ length: maxProperties + 1 }, (_, index) => [`name_${index}`, value]),
    );
    found.push(fault(reached, 'a group that is too large', 'too_many', reached.path, many, 'key'));
  }
  return found;
};

const makers: readonly Make[] = [wrongTypes, missingKeys, unknownKeys, texts, numbers, lists, groups];
