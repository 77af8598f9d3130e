import type { Field, Outcome, Reader } from '../../../../src/index.ts';
import type { CaseDraft, GivenSet } from '../messages.ts';
import { givenInJson, givenInYaml } from './given-in-yaml.ts';

/** What a protocol says of a set, as a case that expects just that. Whether it is right is for people to say. */
export function caseDraft(reader: Reader, name: string, given: GivenSet): CaseDraft {
  const none = { heading: null, couldBe: null, why: [], refused: [], yaml: null };
  const { series, problems } = reader.series('the case', givenInJson(given));
  if (!series) return { ...none, problems: problems.map(({ says }) => says) };
  const [reading] = reader.read(series);
  if (!reading) return { ...none, problems: [] };
  const { sheet, outcome } = reading;
  const lines = [
    `- case: ${JSON.stringify(name)}`,
    `  given: ${givenInYaml(given, fieldsOf(reader))}`,
    '  expect:',
    ...expected(outcome).map((line) => `    ${line}`),
  ];
  return {
    problems: [],
    heading: sheet.level.heading,
    couldBe: sheet.level.couldBe,
    why: sheet.why.map(({ title, decidedBy }) => `${title}: ${decidedBy.join('; ')}`),
    refused: [...sheet.refused, ...sheet.questioned].map(({ says }) => says),
    yaml: `${lines.join('\n')}\n`,
  };
}

const fieldsOf = ({ form }: Reader): readonly Field[] => [
  ...[...form.needs, ...form.helps].flatMap(({ fields }) => fields),
  ...form.patient,
];

function expected({ level, applies, rules, refused }: Outcome): string[] {
  const named = (state: string): string[] =>
    rules.filter((rule) => rule.state === state).map(({ rule }) => rule);
  const list = (key: string, names: readonly string[]): string[] =>
    names.length === 0 ? [] : [`${key}: [${[...new Set(names)].join(', ')}]`];
  const refusals = list(
    'refused',
    refused.map(({ observation }) => observation),
  );
  if (!level) return [`applies: ${applies}`, 'level: { at_least: none }', ...refusals];
  const { at_least: atLeast, could_be: couldBe, settled } = level;
  return [
    `level: { at_least: ${atLeast ?? 'none'}, could_be: ${couldBe}, settled: ${settled ? 'yes' : 'no'} }`,
    ...list('met', named('met')),
    ...list('undecided', named('undecided')),
    ...refusals,
  ];
}
