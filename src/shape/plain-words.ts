import type { Path } from '../problems/place.ts';
import { partAt, type Document, type Node } from '../document/document.ts';
import { quoted } from '../problems/visible.ts';
import { titleOf, type Kind } from './files.ts';
import type { Schema, TypeName } from './schema.ts';
import { schemaAt, type Stated } from './schema-at.ts';

const typeWords: Readonly<Record<TypeName, string>> = {
  string: 'a text',
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
  null: 'nothing',
  array: 'a list',
  object: 'a group of names with values',
};

/** Examples longer than this help nobody. */
const longestExample = 72;

/** Words joined for a sentence: `a, b or c`. */
export function either(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** What belongs at a place, in a few words: `a whole number`; where a definition has words of its own, those. */
export function kindWords({ schema, definition }: Stated): string {
  if (schema.enum) return either(wordsOfChoices(schema));
  // Plain values have a definition that says in words what they are; anything larger is named by its form.
  if (definition !== null && schema.title === undefined && schema.description !== undefined) {
    return lowered(schema.description);
  }
  const types = schema.type === undefined ? [] : [schema.type].flat();
  return either(types.map((type) => typeWords[type]));
}

/** The form in which an example is given. */
export type Form = 'yaml' | 'json';

/** What was expected at a place, with an example where a short one is stated. */
export function expectedAt(stated: Stated, form: Form): string {
  const words = kindWords(stated);
  const example = stated.schema.enum ? null : exampleAt(stated, form);
  return example === null ? words : `${words}, for example ${example}`;
}

/** How a text is written whose signs stand in an order of their own: by its definition, else by an example. */
export function patternAt(stated: Stated, form: Form): string {
  const example = exampleAt(stated, form);
  return stated.definition !== null || example === null
    ? expectedAt(stated, form)
    : `written like ${example}`;
}

function exampleAt({ own, schema }: Stated, form: Form): string | null {
  const examples = [...(own.examples ?? []), ...(schema.examples ?? [])].filter((each) =>
    isOfType(each, schema),
  );
  const texts = examples.map((each) => (form === 'json' ? inJson(each) : inFlow(each)));
  return texts.find((text) => text.length <= longestExample) ?? null;
}

const inJson = (value: unknown): string => JSON.stringify(value, null, 1).replace(/\n\s*/g, ' ');

function isOfType(value: unknown, { type }: Schema): boolean {
  const types = type === undefined ? [] : [type].flat();
  if (Array.isArray(value)) return types.includes('array');
  if (typeof value === 'number') return types.includes('number') || types.includes('integer');
  return types.includes(typeof value as TypeName);
}

/** The words of an enumeration. `true` and `false` are left out where yes and no stand for them. */
export function wordsOfChoices({ enum: choices, const: only }: Schema): string[] {
  const all = choices ?? [only];
  const words = all.filter((each) => typeof each !== 'boolean');
  return (words.length > 0 ? words : all).map(String);
}

/** A value as YAML on one line: `{ at_least: 16 y }`. */
function inFlow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(inFlow).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value).map(([key, each]) => `${key}: ${inFlow(each)}`);
    return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
  }
  return typeof value === 'string' && /[:,#[\]{}"]|^[-?*&!|>%@` ]/.test(value)
    ? JSON.stringify(value)
    : String(value);
}

/** What stands at a place, in words that begin or go on a sentence: `"one"`, `12`, `a list`. */
export function written(node: Node): string {
  if (node.kind === 'list') return 'a list';
  if (node.kind === 'map') return 'a group of names with values';
  return typeof node.value === 'string' ? quoted(node.value) : String(node.value);
}

/**
 * What a place is called in a sentence: `"edition"`, `item 2 of "owners"`, `rule "low_pressure"`; the whole file by its kind.
 */
export function placeWords(kind: Kind, document: Document, path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return titleOf[kind];
  if (typeof last === 'string') return quoted(last);
  const named = ownName(kind, document, path);
  return named ?? `item ${last + 1} of ${placeWords(kind, document, path.slice(0, -1))}`;
}

/** An item that begins with a name of its own is called by it: a rule, a level, a case. */
function ownName(kind: Kind, document: Document, path: Path): string | null {
  const [first] = Object.keys(schemaAt(kind, path)?.schema.properties ?? {});
  const { node } = partAt(document, path);
  if (node.kind !== 'map' || first === undefined) return null;
  const entry = node.entries.find(({ key }) => key === first);
  const isName = schemaAt(kind, path)?.schema.required?.includes(first) ?? false;
  if (!isName || entry?.value.kind !== 'scalar' || typeof entry.value.value !== 'string') return null;
  return `${first} ${quoted(entry.value.value)}`;
}

/** A description as part of a sentence: its first letter small, its full stop gone. */
const lowered = (description: string): string =>
  description.replace(/^[A-Z](?=[a-z ])/, (letter) => letter.toLowerCase()).replace(/[.]$/, '');
