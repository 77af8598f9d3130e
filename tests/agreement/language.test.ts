import { expect, test } from 'vitest';
import schema from '../../schema/protocol.schema.json' with { type: 'json' };
import { drawFrom } from './draw.ts';
import { drawProtocol } from './protocols.ts';
import { wholeFrom } from './seeded.ts';
import { usesOf } from './uses.ts';

// Every key of the language that decides an answer has a place in the generator of protocols.

/** Keys that decide no answer: words for people, sources, and reasons why a check is content. */
const decidesNothing = new Set('title meaning unit source says because ask do accepted'.split(' '));
/** What each set of keys is called by `usesOf`; `over` stands in every look back, and a rule's name and `when` in every rule. */
const { measure, rule, condition, comparison } = schema.$defs;
const wanted = [
  ...Object.keys(measure.properties).map((key) => ['measures', key] as const),
  ...Object.keys(rule.properties).map((key) => ['rules', key] as const),
  ...Object.keys(condition.properties).map((key) => ['asks', key] as const),
  ...Object.keys(comparison.properties).map((key) => ['asks', key] as const),
];

/** What so many made-up protocols use between them. */
function seenIn(protocols: number): ReadonlySet<string> {
  const draw = drawFrom(wholeFrom(20_261_130));
  return new Set(Array.from({ length: protocols }, () => [...usesOf(drawProtocol(draw).protocol)]).flat());
}

const lacking = (seen: ReadonlySet<string>): string[] =>
  wanted.map(([where, key]) => `${where} ${key}`).filter((use) => !seen.has(use));

const excepted = (use: string): boolean => decidesNothing.has(use.split(' ')[1] ?? '');

test('every kind of measure, key of a rule and key of a condition is made, but for what decides nothing', () => {
  expect(wanted.length).toBeGreaterThan(40);
  expect(lacking(seenIn(400)).filter((use) => !excepted(use))).toEqual([]);
});

test('a key that is not made is found, and no exception is without its key', () => {
  expect(lacking(new Set())).toHaveLength(wanted.length);
  const keys = new Set(wanted.map(([, key]) => key));
  expect([...decidesNothing].filter((key) => !keys.has(key as never))).toEqual([]);
});
