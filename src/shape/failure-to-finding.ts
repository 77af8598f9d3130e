import { partAt, type Document, type Node } from '../document/document.ts';
import type { Path } from '../problems/place.ts';
import { reporter, type Finding, type Report } from '../problems/problem.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import type { PlacedFailure } from './failure-place.ts';
import type { Kind } from './files.ts';
import {
  either,
  expectedAt,
  kindWords,
  patternAt,
  placeWords,
  written,
  wordsOfChoices,
  type Form,
} from './plain-words.ts';
import { resolved, schemaAt, type Stated } from './schema-at.ts';

/** What a failure is told from. */
interface Told {
  readonly placed: PlacedFailure;
  readonly node: Node;
  /** The part in words. */
  readonly place: string;
  readonly stated: Stated;
  /** What is stated about the part around it; null at the root. */
  readonly around: Stated | null;
  /** The keys that stand beside it. */
  readonly beside: readonly string[];
  readonly report: Report;
  /** In which form examples are given. */
  readonly form: Form;
}

/** The keywords that a schema may use and that can fail, each with the problem that it becomes. */
const tell: Readonly<Record<string, (told: Told) => void>> = {
  type({ node, place, stated, report, placed, around, beside, form }) {
    const near = nearFixedKey(placed.path, around, beside);
    const more = { part: placed.part, nearMiss: near };
    const facts = { place, expected: expectedAt(stated, form) };
    if (node.kind === 'scalar' && node.value === null)
      return report('value_missing', placed.path, facts, more);
    const belongs = kindWords(stated);
    return report('wrong_type', placed.path, { ...facts, written: written(node), belongs }, more);
  },
  enum: unknownWord,
  const: unknownWord,
  pattern({ placed, node, place, stated, report, form }) {
    const facts = { place, written: written(node), expected: patternAt(stated, form) };
    report(stated.definition === 'name' ? 'name_not_formed' : 'text_not_formed', placed.path, facts);
  },
  minLength({ placed, place, stated, report, form }) {
    report('text_without_words', placed.path, { place, expected: expectedAt(stated, form) });
  },
  maxLength({ placed, node, place, report }) {
    const count = node.kind === 'scalar' ? [...String(node.value)].length : 0;
    report('text_too_long', placed.path, { place, count, most: limitOf(placed) });
  },
  minItems: tooFew,
  minProperties: tooFew,
  maxItems: tooMany,
  maxProperties: tooMany,
  minimum({ placed, node, place, report }) {
    report('number_too_low', placed.path, { place, written: written(node), least: limitOf(placed) });
  },
  maximum({ placed, node, place, report }) {
    report('number_too_high', placed.path, { place, written: written(node), most: limitOf(placed) });
  },
  required({ placed, place, stated, report, form }) {
    const key = String(placed.failure.params['missingProperty']);
    const missing = stated.schema.properties?.[key];
    const expected = missing ? expectedAt(resolved(missing, stated.root), form) : 'a value for it';
    report(
      'key_missing',
      placed.path,
      { key, place, expected: `"${key}" with ${expected}` },
      { part: placed.part },
    );
  },
  propertyNames({ placed, around, report, form }) {
    const key = String(placed.path.at(-1));
    const names = around?.schema.propertyNames;
    const expected = around && names ? expectedAt(resolved(names, around.root), form) : 'a name';
    report('key_not_formed', placed.path, { key, expected }, { part: 'key' });
  },
  additionalProperties({ placed, place, around, beside, report }) {
    const key = String(placed.path.at(-1));
    const allowed = Object.keys(around?.schema.properties ?? {});
    const near = nearMiss(key, candidates(allowed, beside));
    report('key_unknown', placed.path, { key, place, allowed }, { part: 'key', nearMiss: near });
  },
};

/** Every keyword that can fail. */
export const keywords: readonly string[] = Object.keys(tell);

/** Turns a failure of the validator into a problem that waits for its place. */
export function failureToFinding(kind: Kind, document: Document, placed: PlacedFailure): Finding {
  const findings: Finding[] = [];
  const { path, failure } = placed;
  const above = path.slice(0, -1);
  const isUnknownKey = failure.keyword === 'additionalProperties';
  const parent = partAt(document, above).node;
  tell[failure.keyword]?.({
    placed,
    node: partAt(document, path).node,
    place: placeWords(kind, document, isUnknownKey ? above : path),
    stated: statedAt(kind, isUnknownKey ? above : path),
    around: path.length === 0 ? null : statedAt(kind, above),
    beside: parent.kind === 'map' ? parent.entries.map(({ key }) => key) : [],
    report: reporter(findings),
    form: /^\s*\{/.test(document.text) ? 'json' : 'yaml',
  });
  const [finding] = findings;
  if (!finding) throw new Error(`No problem is made of the failure "${failure.keyword}"`);
  return finding;
}

function statedAt(kind: Kind, path: Path): Stated {
  const found = schemaAt(kind, path);
  if (!found) throw new Error(`Nothing is stated about /${path.join('/')}`);
  return found;
}

function unknownWord({ placed, node, place, stated: { schema }, report }: Told): void {
  const words = wordsOfChoices(schema);
  const near =
    node.kind === 'scalar'
      ? nearMiss(
          String(node.value),
          words.map((name) => ({ name })),
        )
      : null;
  report(
    'word_unknown',
    placed.path,
    { place, written: written(node), expected: either(words) },
    { nearMiss: near },
  );
}

function tooFew({ placed, node, place, report }: Told): void {
  const facts = { place, count: sizeOf(node), least: limitOf(placed) };
  report('too_few', placed.path, facts, { part: placed.part });
}

function tooMany({ placed, node, place, report }: Told): void {
  const facts = { place, count: sizeOf(node), most: limitOf(placed) };
  report('too_many', placed.path, facts, { part: placed.part });
}

const limitOf = ({ failure }: PlacedFailure): number => Number(failure.params['limit']);

function sizeOf(node: Node): number {
  if (node.kind === 'list') return node.items.length;
  return node.kind === 'map' ? node.entries.length : 0;
}

/** Where any name can be a key, a value of the wrong kind may stand under a misspelt key of the language: `anny: [...]`. */
function nearFixedKey(path: Path, around: Stated | null, beside: readonly string[]): string | null {
  const key = path.at(-1);
  const { properties = {}, additionalProperties: others } = around?.schema ?? {};
  if (typeof key !== 'string' || typeof others !== 'object' || Object.hasOwn(properties, key)) return null;
  return nearMiss(key, candidates(Object.keys(properties), beside));
}

/** A key that stands there already is not the one that was meant. */
const candidates = (allowed: readonly string[], beside: readonly string[]): { name: string }[] =>
  allowed.filter((name) => !beside.includes(name)).map((name) => ({ name }));
