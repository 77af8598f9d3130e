import { expect, test } from 'vitest';
import { showOutcome } from '../../src/command-line/show-outcome.ts';
import { columns, wrap } from '../../src/command-line/wrap.ts';
import { askable } from '../bundled.ts';
import { outcomes } from '../approved/outcomes.ts';
import { adult, outcome, type Given } from '../outcome/ask.ts';

function shown(set: Given, { name = 'pressure_reading', width = 80, colour = false } = {}): string {
  const compiled = askable(name);
  return showOutcome(outcome(compiled, set), compiled.protocol, { width, colour });
}

const escape = '\u001b';

test('refused and questioned values stand before everything else', () => {
  const [first = '', second = ''] = shown(adult({ systolic: 42, diastolic: 900 })).split('\n\n');
  expect(first).toMatch(/^NOT USED\n- diastolic pressure 900 mmHg/);
  expect(second).toMatch(/^USED, BUT IS IT RIGHT\? TAKE IT AGAIN\n- systolic pressure 42 mmHg/);
});

test('what is not settled at nothing never has the words or the times of the lowest level', () => {
  const { title, says, reassess } = askable('pressure_reading').protocol.ladder.levels[0] ?? {};
  const lowest = [title ?? '', (says ?? '').slice(0, 30), reassess ?? ''];
  expect(lowest.every((words) => words.length > 3)).toBe(true);
  for (const set of [{}, adult({ heart_rate: 72 }), { systolic: 118, diastolic: 66 }]) {
    const text = shown(set);
    expect(text).toContain('It could be as high as Emergency call.');
    for (const words of lowest) expect(text.toLowerCase()).not.toContain(words.toLowerCase());
  }
});

test('a level that is not settled is never shown without what it could be', () => {
  for (const { protocol, set } of outcomes) {
    const text = shown(set, { name: protocol });
    const { level } = outcome(askable(protocol), set);
    if (!level || level.settled) continue;
    expect(text).not.toContain('Settled:');
    expect(text).toMatch(
      level.at_least === null ? /^NO RESULT YET: COMPLETE THE SET$/m : /^ACT NOW ON: .*\nNot settled/m,
    );
  }
});

test('the order is level, why, what is missing, measures, values, edition, caution', () => {
  const text = shown({ systolic: 104, diastolic: 48, temperature: { value: 98.1, unit: '[degF]' } });
  const places = [
    'ACT NOW ON: LOOK AGAIN',
    'Take first ',
    'Tell  ',
    'Until they come',
    'Not settled, because',
    '\nWHY\n',
    'WHAT IS MISSING, AND WHAT IT COULD CHANGE',
    '\nMEASURES\n',
    'NOT STATED BY ANYBODY',
    'CONVERTED OR ROUNDED',
    `pressure_reading, edition ${askable('pressure_reading').protocol.edition}, sha256:`,
    'the paper policy wins',
  ].map((words) => text.indexOf(words));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(places).toEqual(places.toSorted((left, right) => left - right));
});

test('an action that several rules ask for is advised once', () => {
  const text = shown(adult({ systolic: 42, diastolic: 30 })).replaceAll(/\s+/g, ' ');
  expect(text.split('Take the pressure again by hand')).toHaveLength(2);
});

test.each([20, 40, 57, 80, 132])('at %i columns no line is longer, and no word is lost', (width) => {
  const words = (text: string): string => text.replaceAll(/[\s:-]/g, '');
  for (const { protocol, set } of outcomes) {
    const text = shown(set, { name: protocol, width });
    const long = text.split('\n').filter((line) => columns(line) > width && !line.includes('sha256'));
    expect(long).toEqual([]);
    expect(words(text)).toBe(words(shown(set, { name: protocol })));
  }
});

const obeyed = (text: string): string[] =>
  [...text].filter((character) => /[\p{Cc}\p{Cf}]/u.test(character) && character !== '\n');

test('nothing that a terminal would obey comes through, from a set or from a protocol', () => {
  const compiled = askable('pressure_reading');
  const made = outcome(compiled, adult({ systolic: 42, oxygen_saturation: { unobtainable: 'cold' } }));
  // Texts like this are refused when they are read; the printed page does not lean on that.
  const bad = `${escape}]0;a\u0007\u202eb\u009b31m\u200b`;
  const advice = made.advice.map((each) => ({ ...each, title: bad, says: bad, ask: [bad], do: [bad] }));
  const unobtainable = made.unobtainable.map((each) => ({ ...each, because: bad }));
  const changed = { ...made, title: bad, at: bad, advice, unobtainable, caution: bad };
  const text = showOutcome(changed, compiled.protocol, { width: 80, colour: false });
  expect(text.split('␛]0;a␇<U+202E>b<U+009B>31m<U+200B>').length).toBeGreaterThan(6);
  expect(obeyed(text)).toEqual([]);
});

test('colour is an addition: without it the words are the same', () => {
  for (const { protocol, set } of outcomes) {
    const plain = shown(set, { name: protocol });
    const coloured = shown(set, { name: protocol, colour: true });
    expect(plain).not.toContain(escape);
    expect(coloured).toContain(escape);
    expect(
      coloured
        .split(escape)
        .map((part, index) => (index === 0 ? part : part.replace(/^\[[0-9;]*m/, '')))
        .join(''),
    ).toBe(plain);
  }
});

test('each level has a colour of its own, and none is that of a traffic light', () => {
  const codes = outcomes.flatMap(({ protocol, set }) =>
    [...shown(set, { name: protocol, colour: true }).matchAll(/38;5;([0-9]+)m/g)].map(([, code]) =>
      Number(code),
    ),
  );
  expect(new Set(codes).size).toBe(5);
  for (const code of codes) {
    const [red, green, blue] = [
      Math.floor((code - 16) / 36),
      Math.floor((code - 16) / 6) % 6,
      (code - 16) % 6,
    ];
    expect(blue).toBeGreaterThanOrEqual(Math.max(red, green));
  }
});

test.each([
  ['letters of two columns', '日本語', 6],
  ['marks above a letter', 'e\u0301a\u0308', 2],
  ['plain words', 'mmHg', 4],
])('%s take the columns that they take', (_, text, width) => {
  expect(columns(text)).toBe(width);
});

test('a number stays with its unit', () => {
  expect(wrap('the pressure is now 104 mmHg and 48 /min', 24)).toEqual([
    'the pressure is now',
    '104 mmHg and 48 /min',
  ]);
});

test('a word that is longer than a line is broken, by columns', () => {
  expect(wrap('日本語日本語日本語', 10, '- ')).toEqual(['- 日本語日', '  本語日本', '  語']);
});
