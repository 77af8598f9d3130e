import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import type { Compiled, Outcome } from '../../src/index.ts';
import { choiceList } from '../../src/outcome/sentences.ts';
import { askable, bundledNames, bundledText, lessonNames } from '../bundled.ts';
import { outcome, ruleOf, type Given } from './ask.ts';
import { smallNamed, smallProtocols, type SmallName } from './protocols.ts';
import {
  isAsked,
  readSentence,
  type Parsed,
  type ParsedBesideRange,
  type ParsedNumber,
  type Shown,
} from './read-sentence.ts';
import { recomputed, type Recomputed } from './recompute.ts';
import { wholeSet } from './sets.ts';

const halfAHundredth = new Fraction(1, 200);

/** These are read back from one text: a protocol of another text below it is not in it. */
const inTwoTexts = 'lessons/a_ward_adapts';

/** Protocols without look backs: what those find depends on sets that are not in the sentence. */
const protocols: readonly (readonly [string, () => Compiled, string])[] = [
  ...[...bundledNames, ...lessonNames]
    .filter((name) => !['lessons/a_look_back', 'pregnancy_severe_pressure', inTwoTexts].includes(name))
    .map((name) => [name, () => askable(name), bundledText(`${name}/protocol.yaml`)] as const),
  ...(Object.entries(smallProtocols) as [SmallName, string][])
    .filter(([name]) => name !== 'look backs')
    .map(([name, yaml]) => [name, () => smallNamed(name), yaml] as const),
];

interface Told {
  readonly compiled: Compiled;
  /** All values, also those that the outcome was not given. */
  readonly set: Given;
  readonly left: Given;
  readonly made: Outcome;
  readonly exact: Recomputed;
  readonly rule: Outcome['rules'][number];
  readonly sentence: string;
}

/** The name behind a title. Two that are called the same are told apart by the rule that names one of them. */
function nameOf(title: string, { compiled: { protocol }, exact, rule }: Told): string {
  const all = [...protocol.observations.values(), ...protocol.measures.values(), ...protocol.limits.values()];
  const found = all.filter((each) => each.title === title).map(({ name }) => name);
  return found.find((name) => exact.when(rule.rule).includes(name)) ?? found[0] ?? '';
}

const near = (value: Fraction, { value: other, rounded }: Shown): boolean =>
  value.sub(other).abs().compare(rounded) <= 0;

/** Each number is the value, what it is compared with, or their difference, and stands on the side where it is shown. */
function checkNumber(parsed: ParsedNumber, told: Told): void {
  const { exact, rule, sentence } = told;
  const name = nameOf(parsed.subject, told);
  const value = exact.value(name) as Fraction;
  const to =
    parsed.toName === null ? parsed.to.value : (exact.value(nameOf(parsed.toName, told)) as Fraction);
  if (parsed.toName === null) expect(exact.thresholds(name).map(String), sentence).toContain(String(to));
  expect(near(to, parsed.to), sentence).toBe(true);
  expect(parsed.asks[1].value.equals(parsed.to.value), sentence).toBe(true);
  if (parsed.difference === undefined) checkRange(parsed, value, sentence);
  else checkDifference(parsed, value, to, sentence);
  if (exact.when(rule.rule).includes('"none"')) return;
  for (const end of [parsed.low, parsed.high]) {
    expect(isAsked(parsed.asks, end.value), sentence).toBe(rule.state === 'met');
  }
}

function checkDifference(
  { low, to, difference, side }: ParsedNumber,
  value: Fraction,
  exactTo: Fraction,
  sentence: string,
): void {
  const order = Math.sign(value.compare(exactTo));
  expect(near(value, low), sentence).toBe(true);
  expect(Math.sign(low.value.compare(to.value)), sentence).toBe(order);
  expect(side === null ? 0 : side === 'above' ? 1 : -1, sentence).toBe(order);
  if (!difference) return;
  expect(near(value.sub(exactTo).abs(), difference), sentence).toBe(true);
  expect(difference.value.compare(0), sentence).toBeGreaterThan(0);
}

/** The number that it truly is lies inside the range, and the whole range on the side where it is said to lie. */
function checkRange({ low, high, side, to }: ParsedNumber, value: Fraction, sentence: string): void {
  expect(value.compare(low.value.sub(low.rounded)), sentence).toBeGreaterThanOrEqual(0);
  expect(value.compare(high.value.add(high.rounded)), sentence).toBeLessThanOrEqual(0);
  const [first, last] = [low.value.compare(to.value), high.value.compare(to.value)];
  const lies = { above: first > 0, below: last < 0, 'nowhere below': first >= 0, 'nowhere above': last <= 0 };
  expect(side !== null && lies[side], sentence).toBe(true);
}

/** Both numbers lie where they are said to lie, and the whole of the one on its side of the whole of the other. */
function checkBesideRange(parsed: ParsedBesideRange, told: Told): void {
  const { value, side, to, asks } = parsed;
  const { sentence, rule, exact } = told;
  for (const [title, [low, high]] of [[parsed.subject, value] as const, [parsed.toName, to] as const]) {
    const truly = exact.value(nameOf(title, told)) as Fraction;
    expect(truly.compare(low.value.sub(low.rounded)), sentence).toBeGreaterThanOrEqual(0);
    expect(truly.compare(high.value.add(high.rounded)), sentence).toBeLessThanOrEqual(0);
  }
  const [least, most] = [value[0].value.compare(to[1].value), value[1].value.compare(to[0].value)];
  const lies = { above: least > 0, below: most < 0, 'nowhere below': least >= 0, 'nowhere above': most <= 0 };
  expect(lies[side], sentence).toBe(true);
  const asked = {
    'less than that': side === 'below',
    'more than that': side === 'above',
    'that or more': side === 'above' || side === 'nowhere below',
    'that or less': side === 'below' || side === 'nowhere above',
  };
  expect(asked[asks], sentence).toBe(rule.state === 'met');
}

/** Every number with a name in the brackets. How many there were. */
function checkHow(how: string, told: Told): number {
  const { protocol } = told.compiled;
  const labels = [
    ...[...protocol.observations.values()].flatMap(({ name, title, short }) => [
      [title, name] as const,
      [short, name] as const,
    ]),
    ...[...protocol.measures.values()].map(({ name, title }) => [title, name] as const),
  ].toSorted(([left], [right]) => right.length - left.length);
  let rest = how;
  let checked = 0;
  for (const [label, name] of labels) {
    rest = rest.replaceAll(
      new RegExp(`(?<![\\w-])${label} (-?[0-9]+(?:\\.[0-9]+)?)(?![0-9.]| to )`, 'g'),
      (_, text: string) => {
        const value = told.exact.value(name) as Fraction;
        expect(near(value, { value: new Fraction(text), rounded: halfAHundredth }), told.sentence).toBe(true);
        checked += 1;
        return '';
      },
    );
  }
  return checked;
}

function checkChoice({ subject, values }: Extract<Parsed, { kind: 'choice' }>, told: Told): void {
  const { compiled, set, sentence } = told;
  const observation = [...compiled.protocol.observations.values()].find(({ title }) => title === subject);
  const given = [set[observation?.name ?? ''] ?? observation?.ifNotStated].flat();
  const titles = (observation?.choices ?? [])
    .filter(({ choice }) => given.includes(choice))
    .map(({ title }) => title);
  const isMissing = given[0] === undefined || !(observation?.name ?? '' in told.left);
  const said = values.replace(' (not stated, counted so)', '');
  if (said !== 'not taken' || !isMissing) expect(said, sentence).toBe(choiceList(titles, 'and') || 'none');
}

function check(parsed: Parsed, told: Told): void {
  const { made, rule, sentence } = told;
  if (parsed.kind === 'number') checkNumber(parsed, told);
  if (parsed.kind === 'beside a range') checkBesideRange(parsed, told);
  if (parsed.kind === 'choice') checkChoice(parsed, told);
  if (parsed.kind === 'known') expect(nameOf(parsed.subject, told) in told.left, sentence).toBe(parsed.known);
  if (parsed.kind === 'rule') {
    const named = made.rules.find(({ title }) => title === parsed.title);
    expect(named?.state, sentence).toBe(parsed.met ? 'met' : 'not_met');
  }
  if (parsed.kind === 'counted') {
    const so = parsed.holds ? parsed.count : parsed.of - parsed.count;
    // Each of those that hold, or fail, has at least one sentence of its own after this one.
    expect(so, sentence).toBeLessThan(rule.decided_by?.length ?? 0);
  }
}

/** Checks every sentence of an outcome; how many there were of each kind. */
function checkAll(
  told: Omit<Told, 'rule' | 'sentence'>,
  titles: readonly string[],
  counted: Record<string, number>,
): void {
  const add = (kind: string, more = 1): void => void (counted[kind] = (counted[kind] ?? 0) + more);
  for (const rule of told.made.rules) {
    for (const sentence of rule.decided_by ?? []) {
      const parsed = readSentence(sentence, titles);
      expect(parsed, sentence).not.toBeNull();
      if (!parsed) continue;
      check(parsed, { ...told, rule, sentence });
      add(parsed.kind === 'number' && parsed.difference === undefined ? 'range' : parsed.kind);
      if (parsed.kind === 'number') add('in brackets', checkHow(parsed.how, { ...told, rule, sentence }));
    }
  }
}

test.each(protocols)(
  '%s: every sentence, read back, is what exact fractions of the set say',
  (_, of, yaml) => {
    const compiled = of();
    const { protocol } = compiled;
    const titles = [...protocol.observations.values(), ...protocol.measures.values()].map(
      ({ title }) => title,
    );
    const counted: Record<string, number> = {};
    // What only helps, and what counts as something while unstated, is not filled in: it stays as it is.
    const names = [...protocol.observations.values()]
      .filter(({ role }) => role !== 'helps')
      .map(({ name }) => name);
    fc.assert(
      fc.property(wholeSet(compiled), fc.subarray(names), fc.boolean(), (set, gone, isWhole) => {
        const left = Object.fromEntries(
          Object.entries(set).filter(([name]) => isWhole || !gone.includes(name)),
        );
        const made = outcome(compiled, left);
        fc.pre(made.refused.length === 0 && outcome(compiled, set).refused.length === 0);
        checkAll({ compiled, set, left, made, exact: recomputed(yaml, compiled, set) }, titles, counted);
      }),
      { numRuns: 80, seed: 11 },
    );
    expect((counted['number'] ?? 0) + (counted['choice'] ?? 0)).toBeGreaterThan(40);
    if (protocol.measures.size > 0) expect(counted['in brackets']).toBeGreaterThan(20);
  },
);

test('a number that was put wrong into a sentence would be found', () => {
  const compiled = smallNamed('two numbers in one formula');
  const set = { systolic: { value: 104 }, diastolic: { value: 45 } };
  const made = outcome(compiled, { systolic: 104, diastolic: 45 });
  const exact = recomputed(smallProtocols['two numbers in one formula'], compiled, set);
  const titles = ['mean', 'gap'];
  const told = { compiled, set, left: set, made, exact };
  checkAll(told, titles, {});
  const [right = ''] = ruleOf(made, 'low').decided_by ?? [];
  expect(right).toBe(
    'mean 64.67 mmHg ([systolic 104 + 2 × diastolic 45] / 3) is 0.33 below 65; the rule asks for less than 65',
  );
  const wrong = [
    right.replace('64.67', '64.68'),
    right.replace('0.33', '0.3'),
    right.replace('below', 'above'),
    right.replaceAll('65', '66'),
    right.replace('less than', 'more than'),
    right.replace('diastolic 45', 'diastolic 44'),
    right.replace('is 0.33 below', 'is exactly'),
    right.replace('mean', 'man'),
  ];
  for (const sentence of wrong) {
    const rules = made.rules.map((each) =>
      each.rule === 'low' ? { ...each, decided_by: [sentence] } : each,
    );
    expect(() => checkAll({ ...told, made: { ...made, rules } }, titles, {}), sentence).toThrow(/expected/);
  }
});
