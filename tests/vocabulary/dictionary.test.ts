import { expect, test } from 'vitest';
import type { Code } from '../../src/problems/catalogue.ts';
import { dictionaryWording } from '../../src/problems/wording/dictionary.ts';
import { reporter, type Finding } from '../../src/problems/problem.ts';
import type { DictionaryFile, Observation } from '../../src/vocabulary/generated/dictionary-file.ts';
import { readDictionary } from '../../src/vocabulary/dictionary.ts';
import { bases, changed, faults, found, read, says } from './observation-faults.ts';

const { number, colour } = bases;

test.each(faults)('$fault', ({ of, right, wrong, problem, words }) => {
  expect(found(read(changed(of, right)))).toEqual([]);
  const { findings } = read(changed(of, wrong));
  expect(found({ findings })).toEqual([problem]);
  expect(findings.map(says).join(' ')).toContain(words);
});

test('every code of the wording stands in a fault here', () => {
  const ofWhole = [
    'observation_age',
    'contradiction_of_choice',
    'contradiction_units',
    'contradiction_of_one',
  ];
  const shown = new Set([...faults.map(({ problem }) => problem.split(' ')[0]), ...ofWhole]);
  expect(shown).toEqual(new Set([...Object.keys(dictionaryWording), 'unknown_unit']));
});

test('all faults of one observation come at once', () => {
  const wrong: Observation = {
    title: 'x',
    kind: 'number',
    unit: 'bananas',
    possible: [9, 0],
    good_for: '4 h',
    standing: 'yes',
  };
  expect(found(read(wrong))).toEqual([
    'observation_never_standing key /good_for',
    'observation_lacks key /',
    'unknown_unit value /unit',
  ]);
});

test('what an observation cannot do without makes it unreadable; anything else is left out of it', () => {
  expect(read({ ...number, possible: [9, 0] }).entry).toBeNull();
  expect(read({ title: 'colour', kind: 'choice' }).entry).toBeNull();
  expect(
    read({ ...number, ordinary: 'little', good_for: '0.0001 s', plausible: [9, 0] }).entry,
  ).toMatchObject({
    ordinary: null,
    goodFor: null,
    plausible: [],
    possible: [{ ageBelow: null, low: 0, high: 3000 }],
  });
});

test('a near miss is offered for a unit and for a choice', () => {
  expect(read({ ...number, unit: 'ml/hr' }).findings[0]?.nearMiss).toBe('mL/h');
  expect(read({ ...colour, ordinary: 'cleer' }).findings[0]?.nearMiss).toBe('clear');
});

test('an entry: exact steps, titles, milliseconds, frozen', () => {
  const { entry } = read({
    ...number,
    step: '0.1',
    plausible: [0.5, 20],
    ordinary: 1.5,
    good_for: '90 min',
    loinc: '9192-6',
  });
  expect(entry).toMatchObject({
    short: 'drain output',
    meaning: null,
    possible: [{ low: 0, high: 30_000 }],
    plausible: [{ low: 5, high: 200 }],
    ordinary: 15,
    goodFor: 5_400_000,
    standing: false,
    alsoCalled: [],
  });
  expect(
    Object.isFrozen(entry) && Object.isFrozen(entry?.possible) && Object.isFrozen(entry?.possible[0]),
  ).toBe(true);
});

test('bands are kept in steps of age', () => {
  const { entry } = read({
    ...number,
    possible: [
      { age_below: '28 d', from: 0, to: 9 },
      { age_below: '1 y', from: 0, to: 20 },
      { from: 0, to: 99 },
    ],
  });
  expect(entry?.possible.map(({ ageBelow }) => ageBelow)).toEqual([448, 5844, null]);
});

test('a step in another unit that measures the same', () => {
  const age = read({ title: 'age', kind: 'number', unit: 'y', step: '0.0625 d', possible: [0, 130] }, 'age');
  expect(age.findings).toEqual([]);
  expect(age.entry?.stepsPerUnit.toString()).toBe('5844');
  const fever = read({ title: 'fever', kind: 'number', unit: '°C', step: '0.9 °F', possible: [30, 45] });
  expect(fever.entry?.stepsPerUnit.toString()).toBe('2');
});

test.each([
  { title: 'age', kind: 'number', unit: 'y', step: 1, possible: [0, 130] },
  { title: 'age', kind: 'number', unit: 'd', step: 0.0625, possible: [0, 50_000] },
  { title: 'age', kind: 'yes_no' },
] satisfies Observation[])('age is counted in no other way: %j', (plain) => {
  expect(found(read(plain, 'age'))).toEqual(['observation_age key /']);
});

const dictionary: DictionaryFile = {
  dictionary: 'small',
  language: 1,
  sources: { common_practice: { cite: 'Common practice, no published source' } },
  observations: {
    low: { ...number, source: ['common_practice'] },
    high: { ...number, source: ['common_practice'] },
    fine: { ...number, step: 0.5 },
    colour,
    broken: { title: 'x', kind: 'number', step: 1, possible: [0, 9] },
  },
};

function readWhole(plain: DictionaryFile): Finding[] {
  const findings: Finding[] = [];
  readDictionary(plain, reporter(findings));
  return findings.filter(({ path }) => path[1] !== 'broken');
}

test.each<[string, Code, { lower: string; higher: string }]>([
  ['a name that is not there', 'unknown_observation', { lower: 'lo', higher: 'high' }],
  ['a choice', 'contradiction_of_choice', { lower: 'low', higher: 'colour' }],
  ['another step', 'contradiction_units', { lower: 'low', higher: 'fine' }],
  ['itself', 'contradiction_of_one', { lower: 'low', higher: 'low' }],
])('a contradiction with %s', (_, code, pair) => {
  const contradiction = (names: { lower: string; higher: string }): DictionaryFile => ({
    ...dictionary,
    contradictions: [{ ...names, says: 'The low one is lower.' }],
  });
  expect(readWhole(contradiction({ lower: 'low', higher: 'high' }))).toEqual([]);
  expect(readWhole(contradiction(pair)).map((each) => each.code)).toEqual([code]);
});

test('a contradiction with an observation that could not be read is not reported a second time', () => {
  const contradictions = [{ lower: 'low', higher: 'broken', says: 'The low one is lower.' }];
  expect(readWhole({ ...dictionary, contradictions })).toEqual([]);
});

test('a source that is not declared is reported with its near miss', () => {
  const observations = { low: { ...number, source: ['common_practise'] } };
  expect(readWhole({ ...dictionary, observations })).toMatchObject([
    { code: 'unknown_source', path: ['observations', 'low', 'source', 0], nearMiss: 'common_practice' },
  ]);
});

test.each(faults)('the sentence about "$fault" is in plain words', ({ of, wrong }) => {
  const sentence = read(changed(of, wrong)).findings.map(says).join(' ');
  expect(sentence).not.toMatch(/schema|oneOf|must match|additional|undefined|null|NaN|object/i);
  expect(sentence).toMatch(/^\S.*\./);
});
