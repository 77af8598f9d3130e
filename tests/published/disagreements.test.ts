import { expect, test } from 'vitest';
import { readProtocol, type Compiled } from '../../src/index.ts';
import { compareSides } from '../../src/review/compare/compare.ts';
import type { ChangedLevel } from '../../src/review/compare/comparison.ts';
import { askable, bundledLadder, bundledText } from '../bundled.ts';
import { ask } from './kit.ts';
import { protocolText } from './works.ts';

// Published criteria disagree, and it is known where. The comparison of editions, which knows nothing of it, must come upon the same sets.

const ladder = bundledLadder();

/** A protocol after a part of its text became another: what is not there to be replaced is a mistake of the test. */
function changed(name: string, text: string, part: string | RegExp, by: string): Compiled {
  const other = text.replace(part, by);
  expect(other).not.toBe(text);
  const { protocol, problems } = readProtocol(`${name}.yaml`, other, { ladder });
  if (!protocol)
    throw new Error(problems.map(({ line, says }) => `${name}.yaml:${line}: ${says}`).join('\n'));
  return protocol;
}

const levelsOf = (before: Compiled, after: Compiled): ReadonlyMap<string, ChangedLevel> =>
  new Map(compareSides(before, after, null).levels.map((level) => [`${level.from} > ${level.to}`, level]));

// Singer 2016: two of breathing from 22, systolic up to 100, a mind that is not clear. Bone 1992: two of four criteria, all of them strict.
const quick = changed(
  'qsofa',
  protocolText('qsofa'),
  'rule: positive, when',
  'rule: positive, level: call_doctor, when',
);
const older = changed(
  'sirs',
  protocolText('sirs'),
  'rule: response\n',
  'rule: response\n    level: call_doctor\n',
);

test('the quick list of 2016 and the list of 1992 each find patients that the other misses', () => {
  const levels = levelsOf(quick, older);
  expect([...levels.keys()].sort()).toEqual(['call_doctor > usual_round', 'usual_round > call_doctor']);
  for (const { witness } of levels.values()) expect(witness.confirmed).toBe(true);

  const quickAlone = levels.get('call_doctor > usual_round')?.witness.set;
  // One criterion of the four, here fever, is not yet a response.
  expect(quickAlone).toMatchObject({
    systolic: 100,
    glasgow_coma_total: 14,
    heart_rate: 72,
    temperature: 38.1,
  });

  const { set } = levels.get('usual_round > call_doctor')?.witness ?? { set: {} };
  expect(set).toMatchObject({ systolic: 120, glasgow_coma_total: 15 });
});

test('the worked patient whom only the quick list finds lies in a region that the comparison names', () => {
  const patient = { temperature: 38.5, heart_rate: 90, respiratory_rate: 20 };
  const ordinaryCells = { carbon_dioxide: 40, white_cells: 7, band_forms: 0 };
  const quickly = ask(quick, { ...patient, systolic: 90, glasgow_coma_total: 14 });
  expect(quickly.rules.find(({ rule }) => rule === 'positive')?.state).toBe('met');
  const strictly = ask(older, { ...patient, ...ordinaryCells });
  expect(strictly.rules.find(({ rule }) => rule === 'response')?.state).toBe('not_met');
  expect(levelsOf(quick, older).get('call_doctor > usual_round')?.regions).toContainEqual([
    'respiratory rate at most 20 /min',
    'temperature at least 38.1 °C',
    'heart rate at most 90 /min',
    'arterial carbon dioxide at least 32 mmHg',
    'white cells 4 to 12 10^9/L',
    'immature white cells at most 10 %',
    'bedside score at least 2',
  ]);
});

test('a risk by the total alone misses the patient with three points in one parameter', () => {
  // NG253 of 2025 sorts by the total; the score itself also answers to one parameter with three points.
  const text = bundledText('early_warning_score/protocol.yaml');
  const single = / {2}- rule: three_in_one_parameter[\s\S]*?(?= {2}- rule: score_5_or_more)/;
  const [score, byTotal] = [askable('early_warning_score'), changed('by_total', text, single, '')];
  const levels = levelsOf(score, byTotal);
  expect([...levels.keys()]).toEqual(['call_doctor > look_again']);
  const { witness, direction } = levels.get('call_doctor > look_again') ?? {};
  expect([direction, witness?.confirmed]).toEqual(['lower', true]);
  const { rules, measures } = ask(score, witness?.set ?? {});
  const met = rules.filter(({ state }) => state === 'met').map(({ rule }) => rule);
  expect(met).toEqual(['score_1_or_more', 'three_in_one_parameter']);
  expect(measures.score_total).toMatchObject({ value: 3 });
});
