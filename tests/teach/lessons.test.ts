import { expect, test } from 'vitest';
import { readLessons, type Teacher } from '../../src/index.ts';
import { askable, bundledNames, bundledText, bundledWard, lessonNames } from '../bundled.ts';

const taughtFrom = (name: string): Teacher =>
  readLessons(askable(name), { file: 'cases.yaml', text: bundledText(`${name}/cases.yaml`) });

test.each([...bundledNames, ...lessonNames])('every case of %s can be drilled', (name) => {
  const { lessons, drill } = taughtFrom(name);
  expect(lessons.cards.length).toBeGreaterThan(4);
  expect(lessons.leftOut).toEqual([]);
  expect(lessons.problems).toEqual([]);
  expect(lessons.cards.every((card) => drill(card.name) !== null)).toBe(true);
});

test('a case unfolds as its story, then the set in the order in which it is taken, and not by its name', () => {
  const drill = taughtFrom('pressure_reading').drill('Each number nearly fine, and newly confused');
  expect(drill?.story).toBe('The third evening after a hip operation. She asks where her mother is.');
  expect(drill?.patient.map(({ observation }) => observation)).toEqual(['age', 'pregnancy']);
  expect(drill?.parts.map(({ heading }) => heading)).toEqual([
    'Look and listen',
    'Breathing',
    'Rate',
    'Pressure',
    'Temperature',
  ]);
  const words = new Map(drill?.askable.map(({ observation, words: said }) => [observation, said]));
  expect(words.get('systolic')).toBe('108 mmHg');
  expect(words.get('mean_pressure')).toBe('not taken');
  expect(JSON.stringify(drill)).not.toContain('nearly fine');
});

test('a series unfolds set by set, the present one last', () => {
  const drill = taughtFrom('pressure_reading').drill('Slow rate, systolic up by 20, gap wider by 15');
  expect(drill?.earlier.map(({ at }) => at)).toEqual(['2026-03-03 09:00 UTC']);
  expect(drill?.earlier[0]?.lines).toContainEqual({
    observation: 'systolic',
    title: 'systolic pressure',
    words: '130 mmHg',
  });
  expect(drill?.at).toBe('2026-03-03 12:30 UTC');
});

test('the answer gives the level, the reasons, the mistake, output and vessels, and what would change it either way', () => {
  const answer = taughtFrom('pressure_reading').answer('A mean too low behind a systolic that looks fine');
  expect(answer?.rulesSay).toBe('Call the doctor');
  expect(answer?.rules).toEqual({ atLeast: 3, couldBe: 3 });
  expect(answer?.sheet.why.map(({ rule }) => rule)).toContain('mean_too_low');
  expect(answer?.outputAndVessels.caseSays).toBe('The vessels have let go');
  expect(answer?.outputAndVessels.ownSentences.join(' ')).toContain('the vessels have opened');
  expect(answer?.commonMistake).not.toBeNull();
  expect(answer?.lowers).toContainEqual({
    observation: 'diastolic',
    title: 'diastolic pressure',
    change: '1 mmHg higher, at 45 mmHg',
    level: 'Look again',
  });
  expect(answer?.sheet.raises?.length).toBeGreaterThan(0);
});

test('a case that does not come out as expected is not taught from, and is named', () => {
  const text = bundledText('lessons/one_threshold/cases.yaml').replace(
    /at_least: usual_round/,
    'at_least: emergency_call',
  );
  const { lessons } = readLessons(askable('lessons/one_threshold'), { file: 'cases.yaml', text });
  expect(lessons.leftOut).toHaveLength(1);
  expect(lessons.cards.map(({ name }) => name)).not.toContain(lessons.leftOut[0]);
});

test('without a file of cases there is nothing to drill, and still a handout', () => {
  const { lessons, handout } = readLessons(askable('lessons/one_threshold'), null);
  expect(lessons.cards).toEqual([]);
  expect(handout.levels[0]?.title).toBe('Emergency call');
});

test('a ward policy is taught from as one, each rule named with its protocol', () => {
  const teacher = readLessons(bundledWard(), {
    file: 'cases.yaml',
    text: bundledText('alder_wing/cases.yaml'),
  });
  expect(teacher.lessons.leftOut).toEqual([]);
  expect(teacher.lessons.cards.length).toBeGreaterThan(20);
  const nobody = teacher.answer('Nobody has taken anything');
  expect(nobody?.rules).toEqual({ atLeast: null, couldBe: 4 });
  const septic = teacher.answer('Septic, badly cuffed, and on a medicine that opens the vessels');
  expect(septic?.rulesSay).toBe('Emergency call');
  expect(septic?.lowers.map(({ observation }) => observation)).toContain('respiratory_rate');
  expect(teacher.lessons.rules.every(({ rule }) => rule.includes('.'))).toBe(true);
});

test('the handout has each level with hours and times, each rule with its reason and sources, and the digest', () => {
  const { handout } = taughtFrom('pressure_reading');
  expect(handout.levels.map(({ title }) => title)).toEqual([
    'Emergency call',
    'Call the doctor',
    'Tell the nurse in charge',
    'Look again',
    'Usual round',
  ]);
  expect(handout.levels[1]?.tell).toContain('Night doctor (20:00 to 08:00)');
  const [part] = handout.parts;
  const rule = part?.rules.find(({ title }) => title === 'Systolic too low');
  expect(rule?.when.text).toBe('systolic pressure at most 90 mmHg (lowest acceptable systolic)');
  expect(rule?.sources.map((number) => part?.sources[number - 1])).toEqual([
    expect.stringContaining('Royal College of Physicians'),
  ]);
  expect(part?.rules).toHaveLength(askable('pressure_reading').protocol.rules.length);
  expect(handout.digest).toBe(askable('pressure_reading').protocol.digest);
  expect(handout.caution).toContain('paper policy wins');
});

test('the handout says how a score counts', () => {
  const [part] = taughtFrom('lessons/a_score').handout.parts;
  expect(part?.measures.flatMap(({ lines }) => lines).join('\n')).toMatch(/respiratory rate: at most 8: 3/);
});
