import { readdirSync, readFileSync } from 'node:fs';
import { parse, stringify } from 'yaml';
import { caseProblems } from '../../src/cases/case-problems.ts';
import { documentToCases } from '../../src/cases/document-to-cases.ts';
import { runCase } from '../../src/cases/run-case.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { partAt, type Document } from '../../src/document/document.ts';
import type { Compiled } from '../../src/outcome/compile.ts';
import type { Problem } from '../../src/problems/problem.ts';
import type { Parents } from '../../src/protocol/based-on/basis.ts';
import { documentToLadder } from '../../src/protocol/document-to-protocol.ts';
import { documentToChecked, type CheckedProtocol } from '../../src/review/document-to-checked.ts';
import { documentToWard } from '../../src/ward/document-to-ward.ts';
import { guardsOf } from '../../src/review/guards/guards-of.ts';
import { findingsOf } from '../../src/review/findings/find-findings.ts';
import { needlessReasons, unknownReasons } from '../../src/review/guards/reasons.ts';
import { vitalSigns } from '../../src/vocabulary/vital-signs.ts';

// Each problem of what a file means has a page in schema/problems/: examples that have it, and examples that are well.

/** What is not a file of the language: it has a test of its own. */
type Kept = 'edition' | 'record' | 'approvers';

/** The page of one problem. */
interface Page {
  /** A `child` is a protocol that is based on the small whole one. */
  readonly of?: 'protocol' | 'ladder' | 'cases' | 'child' | 'ward' | Kept;
  /** Further protocols that a child can be based on: each laid over the small whole one, or a child of it themselves. */
  readonly parents?: readonly string[];
  readonly reject: readonly string[];
  readonly accept: readonly string[];
  /** The same problem in files of another kind. */
  readonly also?: readonly Omit<Page, 'also'>[];
}

const folder = new URL('../../schema/problems/', import.meta.url);
const base = parse(readFileSync(new URL('base.yaml', import.meta.url), 'utf8')) as Record<string, unknown>;
const levels =
  'ladder: example_ladder\nedition: 1\nlevels: [{ level: usual_round }, { level: look_again }, { level: call_doctor }]\n';

const pages = readdirSync(folder)
  .map((file) => file.replace('.yaml', ''))
  .flatMap((code) => {
    const page = parse(readFileSync(new URL(`${code}.yaml`, folder), 'utf8')) as Page;
    return [page, ...(page.also ?? [])].map((each) => ({ code, ...each }));
  });
const everyExample = pages.flatMap(({ code, of = 'protocol', parents = [], reject, accept }) => [
  ...reject.map((text, index) => ({
    name: `${code} is found in example ${index + 1} (${of})`,
    code,
    of,
    parents,
    text,
    found: true,
  })),
  ...accept.map((text, index) => ({
    name: `${code} is not found in the mended example ${index + 1} (${of})`,
    code,
    of,
    parents,
    text,
    found: false,
  })),
]);

type Example = (typeof everyExample)[number];
const isKept = ({ of }: Pick<Example, 'of'>): boolean => ['edition', 'record', 'approvers'].includes(of);

/** The examples of what a protocol, a ladder, a ward policy or a case file means. */
export const examples = everyExample.filter(
  (each): each is Example & { of: Exclude<Example['of'], Kept> } => !isKept(each),
);
export const keptExamples = everyExample.filter(isKept);
export const codes = [...new Set(examples.map(({ code }) => code))];

function document(text: string): Document {
  const read = yamlToDocument('example.yaml', text);
  if (!read.document) throw new Error(read.problems.map(({ says }) => says).join('\n'));
  return read.document;
}

/** An example laid over a small whole protocol: lists grow, maps get more keys, everything else is put in its place. */
function protocolWith(text: string, below: object = base): string {
  const whole = structuredClone(below) as Record<string, unknown>;
  for (const [key, value] of Object.entries(parse(text) as Record<string, unknown>))
    whole[key] = laidOver(whole[key], value);
  return stringify(whole);
}

function laidOver(below: unknown, above: unknown): unknown {
  if (Array.isArray(below) && Array.isArray(above)) return [...(below as unknown[]), ...(above as unknown[])];
  if (!isMap(below) || !isMap(above)) return above;
  const keys = new Set([...Object.keys(below), ...Object.keys(above)]);
  return Object.fromEntries(
    [...keys].map((key) => [key, key in above ? laidOver(below[key], above[key]) : below[key]]),
  );
}

const isMap = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const today = '2026-03-02';
const exampleLadder = documentToLadder(document(levels)).ladder;

/** A protocol that is based on the small whole one, and changes nothing. */
const child = {
  protocol: 'ward_example',
  edition: 1,
  title: 'An example of a ward',
  based_on: { protocol: 'example', edition: 1 },
  ladder: 'example_ladder',
};

function parentsOf(texts: readonly string[]): Parents {
  const isChild = (text: string): boolean => 'based_on' in (parse(text) as object);
  const wholes = [stringify(base), ...texts.map((text) => protocolWith(text, isChild(text) ? child : base))];
  return new Map(
    wholes.map((text) => {
      const { protocol } = parse(text) as { protocol: string };
      return [protocol, { file: `${protocol}.yaml`, text }];
    }),
  );
}

function checked(text: string, ladder = exampleLadder, parents: Parents = new Map()): CheckedProtocol {
  return documentToChecked(document(text), {
    dictionary: vitalSigns,
    ladder: ladder?.name === parse(text).ladder ? ladder : null,
    today,
    parents,
  });
}

/** What an example of a ward can read with: the base, one with errors, one of another ladder, one that means another thing by a name. */
function wardProblems(text: string): readonly Problem[] {
  const other = documentToLadder(document(levels.replace('example_ladder', 'other_ladder'))).ladder;
  const named = (protocol: string, more = ''): string =>
    protocolWith(`protocol: ${protocol}${more === '' ? '' : `\n${more}`}`);
  const protocols = new Map([
    ['example', checked(stringify(base)).compiled],
    ['broken', null],
    ['on_another_ladder', checked(named('on_another_ladder', 'ladder: other_ladder'), other).compiled],
    [
      'with_another_floor',
      checked(named('with_another_floor', 'limits: { floor: { value: 90.5 } }')).compiled,
    ],
  ]);
  return documentToWard(document(text), { ladder: exampleLadder, protocols, today }).problems;
}

/** The whole file that an example stands for. */
export function wholeText(of: NonNullable<Page['of']>, text: string): string {
  if (of === 'child') return protocolWith(text, child);
  return of === 'protocol' ? protocolWith(text) : text;
}

/** The problems of a whole file. */
export function problemsOf(
  of: NonNullable<Page['of']>,
  text: string,
  parents: readonly string[],
): readonly Problem[] {
  if (of === 'child') return checked(text, exampleLadder, parentsOf(parents)).problems;
  if (of === 'ladder') return documentToLadder(document(text)).problems;
  if (of === 'ward') return wardProblems(text);
  if (of === 'protocol') return [...checked(text).problems, ...problemsOfAnswers(text)];
  const { compiled } = checked(stringify(base));
  if (!compiled) throw new Error('the base protocol has problems');
  const cases = document(text);
  const read = documentToCases(cases, compiled.protocol);
  const failing = read.cases.flatMap((each) => caseProblems(runCase(compiled, each), cases));
  return [...read.problems, ...failing, ...problemsOfReasons(cases, compiled)];
}

/** The problems of the answers to findings. */
function problemsOfAnswers(text: string): readonly Problem[] {
  const read = document(text);
  if (partAt(read, ['findings']).keySpan === null) return [];
  const { compiled } = checked(text);
  return compiled ? findingsOf({ compiled, document: read, cases: null }).problems : [];
}

/** The problems of the reasons for changes that nothing notices. */
function problemsOfReasons(cases: Document, compiled: Compiled): Problem[] {
  if (partAt(cases, ['unguarded']).keySpan === null) return [];
  const whole = document(stringify(base));
  const { ladder } = documentToLadder(document(levels));
  const surroundings = { dictionary: vitalSigns, ladder, today: null };
  return [
    ...unknownReasons(cases, whole, compiled.protocol),
    ...needlessReasons(cases, [...guardsOf({ document: whole, compiled, cases, surroundings })]),
  ];
}
