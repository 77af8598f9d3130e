import type { Plain } from './protocols.ts';

const comparisons = [
  'below',
  'above',
  'at_most',
  'at_least',
  'between',
  'is',
  'one_of',
  'known',
  'unobtainable',
];
const joiners = ['all', 'any', 'none', 'at_least_of', 'rule'];
const kinds = ['formula', 'curve', 'score', 'choose', 'first_known'];
const lookBacks = [
  'highest',
  'lowest',
  'average',
  'earliest',
  'latest',
  'change',
  'count',
  'minutes_since',
  'held',
];

/** Everything that a protocol of the language can use, as `usesOf` names it. */
export const allUses: readonly string[] = [
  ...[...comparisons, ...joiners].map((key) => `asks ${key}`),
  ...[...kinds, ...lookBacks, 'where', 'longest_gap', 'not_reliable_when'].map((key) => `measures ${key}`),
  'beyond missing',
  'beyond hold',
  'present_set left_out',
  'present_set included',
  ...['unless', 'explained_by', 'not_reliable_when', 'level', 'no level'].map((key) => `rules ${key}`),
  'explained to a level',
  'explained without a level',
].concat('applies_when standing limits needs helps good_for taken_with if_not_stated'.split(' '));

/** Every form that an observation, a set or a series can have. */
export const setForms: readonly string[] =
  'value unit low high unobtainable declined above_device below_device at sets patient standing limits until'.split(
    ' ',
  );

/** Every key at any depth of a condition. */
function keysOf(condition: unknown): readonly string[] {
  if (typeof condition !== 'object' || condition === null) return [];
  return Object.entries(condition).flatMap(([key, what]) => [key, ...keysOf(what)]);
}

const asks = (...conditions: readonly unknown[]): readonly string[] =>
  conditions.flatMap(keysOf).map((key) => `asks ${key}`);

function usesOfMeasure(measure: Plain): readonly string[] {
  const { curve, choose, where, held, present_set: present, not_reliable_when: blind } = measure;
  const whens = ((choose ?? []) as Plain[]).map(({ when }) => when);
  return [
    ...Object.keys(measure).map((key) => `measures ${key}`),
    ...asks(where, held, blind, ...whens),
    ...(curve ? [`beyond ${(curve as { beyond?: string }).beyond ?? 'nothing'}`] : []),
    ...(typeof present === 'string' ? [`present_set ${present}`] : []),
  ];
}

function usesOfRule(rule: Plain): readonly string[] {
  const { when, unless, explained_by: explained, not_reliable_when: blind, level } = rule;
  const whens = [unless, explained].map((part) => (part as Plain | undefined)?.when);
  return [
    ...Object.keys(rule).map((key) => `rules ${key}`),
    ...(level === undefined ? ['rules no level'] : []),
    ...(explained ? [`explained ${'level' in (explained as Plain) ? 'to' : 'without'} a level`] : []),
    ...asks(when, blind, ...whens),
  ];
}

/** What one protocol uses of the language. */
export function usesOf(protocol: Plain): ReadonlySet<string> {
  const { observations, standing = {}, measures = {}, rules, applies_when: scope } = protocol;
  const { declares, ...roles } = observations as Plain;
  const inner = [declares, standing].flatMap((each) => Object.values(each as Record<string, Plain>));
  return new Set([
    ...Object.keys({ ...protocol, ...roles }),
    ...inner.flatMap((each) => Object.keys(each)),
    ...asks(scope),
    ...Object.values(measures as Record<string, Plain>).flatMap(usesOfMeasure),
    ...(rules as Plain[]).flatMap(usesOfRule),
  ]);
}
