import * as fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { parseDuration, parseQuantity, toSteps } from '../../src/vocabulary/quantity.ts';
import { unitByWord, units, type Unit } from '../../src/vocabulary/units.ts';

const unit = (word: string): Unit => {
  const found = unitByWord(word);
  if (!found) throw new Error(`no ${word}`);
  return found;
};

function shown(text: string | number): string {
  const read = parseQuantity(text);
  return 'problem' in read
    ? read.problem.code
    : [read.value.toFraction(), read.unit?.word ?? ''].join(' ').trim();
}

test.each([
  [90, '90'],
  ['90', '90'],
  [-0.5, '-1/2'],
  [0.1, '1/10'],
  ['38.3 °C', '383/10 °C'],
  ['16 y', '16 y'],
  ['0.0625 d', '1/16 d'],
  ['-4 °C', '-4 °C'],
  ['97 %', '97 %'],
  ['12 10^9/L', '12 10^9/L'],
  ['007', '7'],
  ['0.10', '1/10'],
  ['-0', '0'],
  ['123456789012345', '123456789012345'],
  ['0.000000000000000000001', '1/1000000000000000000000'],
])('%j is %s', (text, value) => {
  expect(shown(text)).toBe(value);
});

test.each([
  ['', null],
  [' ', null],
  ['mmHg', null],
  ['1e3', null],
  [1e21, null],
  [1e-7, null],
  [Number.NaN, null],
  [Infinity, null],
  ['0x10', null],
  ['1_000', null],
  ['1,200', null],
  ['1.2.3', null],
  ['--5', null],
  ['1/2', null],
  ['90\u0000', null],
  ['٩٠', null],
  ['mean_floor', null],
  ['+5', '5'],
  ['5 ', '5'],
  [' 5', '5'],
  ['.5', '0.5'],
  ['37,5', '37.5'],
  ['37,5 °C', '37.5 °C'],
  ['−4 °C', '-4 °C'],
  ['16y', '16 y'],
  ['98%', '98 %'],
  ['16  y', '16 y'],
  ['16\u00a0y', '16 y'],
])('%j is no quantity; the near miss is %j', (text, nearMiss) => {
  const read = parseQuantity(text);
  expect(read).toMatchObject({ problem: { code: 'not_a_quantity', nearMiss } });
});

test.each([
  ['16 years', 'y'],
  ['90 bpm', '/min'],
  ['38 C', '°C'],
  ['5 mmol/l', 'mmol/L'],
  ['120 mmhg', 'mmHg'],
  ['120 mm[Hg]', 'mmHg'],
  ['98 percent', '%'],
  ['4 hours', 'h'],
  ['5 bananas', null],
  ['140 90', null],
])('the unit of %j is unknown; the near miss is %j', (text, nearMiss) => {
  const read = parseQuantity(text);
  expect(read).toMatchObject({
    problem: { code: 'unknown_unit', facts: { unit: text.split(' ')[1] }, nearMiss },
  });
});

test.each(['1234567890123456', '0.1234567890123456', '1.000000000000000', `${'9'.repeat(50)} y`])(
  '%s has too many digits',
  (text) => {
    expect(shown(text)).toBe('too_many_digits');
  },
);

test('a very long text is refused at once, and its problem does not repeat it all', () => {
  const read = parseQuantity('9'.repeat(1_000_000));
  expect(read).toMatchObject({ problem: { code: 'not_a_quantity' } });
  expect(JSON.stringify(read).length).toBeLessThan(200);
});

const digits = fc.stringMatching(/^[1-9][0-9]{0,6}$/);
const decimal = fc
  .tuple(fc.constantFrom('', '-'), digits, fc.option(fc.stringMatching(/^[0-9]{1,7}$/)))
  .map(([sign, whole, part]) => `${sign}${whole}${part === null ? '' : `.${part}`}`);

test('fuzz: every decimal is read exactly, with every unit', () => {
  fc.assert(
    fc.property(decimal, fc.constantFrom(null, ...units), (text, of) => {
      const read = parseQuantity(of ? `${text} ${of.word}` : text);
      if ('problem' in read) throw new Error(text);
      const [whole = '', part = ''] = text.split('.');
      const scaled = BigInt(whole + part);
      expect(read.unit).toBe(of);
      expect(read.value.s * read.value.n * 10n ** BigInt(part.length)).toBe(scaled * read.value.d);
    }),
    { numRuns: 1000 },
  );
});

test('fuzz: a number reads as its own decimal text', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, min: -1e15, max: 1e15 }), (number) => {
      const text = String(number);
      // An exponent, or more digits than a file may hold.
      const unreadable = /e/.test(text) || text.replace(/[-.]/g, '').replace(/^0+/, '').length > 15;
      expect(shown(number)).toBe(shown(text));
      expect(/^-?[0-9/]+$/.test(shown(number))).toBe(!unreadable);
    }),
    { numRuns: 1000 },
  );
});

test('fuzz: whatever is written, the answer is a quantity of that very form or a problem, never an exception', () => {
  // Lone surrogates and control characters too.
  const anyLetter = fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code));
  const signs = fc.stringMatching(/^[-+0-9.,eE x/°%mLhyd\u00a0−]{0,12}$/);
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.string({ unit: anyLetter }), signs), (text) => {
      const readable = !('problem' in parseQuantity(text));
      expect(readable && !/^-?[0-9]+(?:\.[0-9]+)?(?: \S+)?$/.test(text)).toBe(false);
    }),
    { numRuns: 2000 },
  );
});

test('fuzz: the near miss of what is no quantity is a quantity', () => {
  const number = fc.stringMatching(/^[-+−]?[0-9]{0,3}[.,]?[0-9]{1,3}$/);
  const space = fc.constantFrom('', ' ', '  ', '\u00a0');
  let offered = 0;
  fc.assert(
    fc.property(
      number,
      space,
      fc.constantFrom('', ...units.map(({ word }) => word)),
      (digit, between, word) => {
        const read = parseQuantity(digit + between + word);
        const nearMiss =
          'problem' in read && read.problem.code === 'not_a_quantity' ? read.problem.nearMiss : null;
        if (nearMiss === null) return true;
        offered += 1;
        return !('problem' in parseQuantity(nearMiss));
      },
    ),
    { numRuns: 1000 },
  );
  expect(offered).toBeGreaterThan(100);
});

test.each([
  ['1 s', 1000],
  ['15 min', 900_000],
  ['4 h', 14_400_000],
  ['0.5 h', 1_800_000],
  ['1 d', 86_400_000],
  ['1 wk', 604_800_000],
  ['1 mo', 2_629_800_000],
  ['1 y', 31_557_600_000],
  ['0.001 s', 1],
  ['0 min', 0],
  ['0.0001 s', null],
  ['0.33333333333 min', null],
  ['-1 h', null],
  ['4h', null],
  ['4', null],
  ['4 ms', null],
  ['4 hours', null],
  ['1e3 s', null],
  ['999999999999 y', null],
  ['', null],
])('the duration %j is %j milliseconds', (text, milliseconds) => {
  expect(parseDuration(text)).toBe(milliseconds);
});

const temperature = { unit: unit('°C'), stepsPerUnit: new Fraction(10) };
const age = { unit: unit('y'), stepsPerUnit: new Fraction(5844) };

test.each([
  ['38.3', null, temperature, 383, true],
  ['38.3', '°C', temperature, 383, true],
  ['38.35', null, temperature, 384, false],
  ['38.34', null, temperature, 383, false],
  ['-0.05', null, temperature, -1, false],
  ['-0.04', null, temperature, 0, false],
  ['98.1', '°F', temperature, 367, false],
  ['100.9', '°F', temperature, 383, false],
  ['100.4', '°F', temperature, 380, true],
  ['16', 'y', age, 93_504, true],
  ['1', 'mo', age, 487, true],
  ['5', 'd', age, 80, true],
  ['1', 'wk', age, 112, true],
  ['1', 'h', age, 1, false],
  ['16', 'kPa', { unit: unit('mmHg'), stepsPerUnit: new Fraction(1) }, 120, false],
  ['50', '%', { unit: null, stepsPerUnit: new Fraction(10) }, 5, true],
])('%s %s in steps', (value, from, observation, steps, exact) => {
  expect(toSteps(new Fraction(value), from === null ? null : unit(from), observation)).toEqual({
    steps,
    exact,
  });
});

test('more steps than can be counted exactly are as many as can, not exact', () => {
  const most = Number.MAX_SAFE_INTEGER;
  expect(toSteps(new Fraction('999999999999999'), null, age)).toEqual({ steps: most, exact: false });
  expect(toSteps(new Fraction('-999999999999999'), null, age)).toEqual({ steps: -most, exact: false });
});

test('a unit that measures something else is a fault of the caller', () => {
  expect(() => toSteps(new Fraction(1), unit('mmHg'), temperature)).toThrow('does not measure');
  expect(() => toSteps(new Fraction(1), unit('mmHg'), { unit: null, stepsPerUnit: new Fraction(1) })).toThrow(
    'plain number',
  );
});

test('fuzz: a value on its step keeps it; any other moves by half a step at most, away from zero on a tie', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -10_000, max: 10_000 }),
      fc.integer({ min: -50, max: 50 }),
      (step, hundredth) => {
        const value = new Fraction(step, 10).add(new Fraction(hundredth, 1000));
        const { steps, exact } = toSteps(value, null, temperature);
        const moved = new Fraction(steps, 10).sub(value).abs();
        expect(exact).toBe(hundredth === 0);
        expect(moved.compare(new Fraction(1, 20))).toBeLessThanOrEqual(0);
        const tie = moved.equals(new Fraction(1, 20));
        expect(tie && new Fraction(steps, 10).abs().compare(value.abs()) < 0).toBe(false);
      },
    ),
  );
});
