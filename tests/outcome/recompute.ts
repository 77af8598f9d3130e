import Fraction from 'fraction.js';
import { parse } from 'yaml';
import type { Compiled } from '../../src/index.ts';
import { read, work } from '../oracle/fraction.ts';
import type { Given } from './ask.ts';

type Plain = Readonly<Record<string, unknown>>;

/** Works numbers out anew from the YAML and the set, in exact fractions; null without a value. */
export interface Recomputed {
  /** An observation, a measure or a limit, in the unit in which it is shown. */
  value(name: string): Fraction | null;
  /** Every plain number that conditions compare a name with. */
  thresholds(name: string): readonly Fraction[];
  /** The conditions of a rule, as written. */
  when(rule: string): string;
}

/** On which sides of a number each comparison holds: below, exactly on it, above. */
const sidesOf: Readonly<Record<string, readonly number[]>> = {
  below: [-1],
  at_most: [-1, 0],
  above: [1],
  at_least: [0, 1],
};

const isNumber = (text: unknown): boolean => /^-?[0-9.]+( .*)?$/.test(String(text));

const inYears: Readonly<Record<string, Fraction>> = { mo: new Fraction(1, 12), d: new Fraction(4, 1461) };

/** A number as written; an age in years. */
const fractionOf = (text: unknown): Fraction => {
  const { n, d } = read(text);
  return new Fraction(n, d).mul(inYears[String(text).split(' ')[1] ?? ''] ?? 1);
};

export function recomputed(yaml: string, { protocol }: Compiled, set: Given): Recomputed {
  const file = parse(yaml) as Readonly<Record<string, Readonly<Record<string, Plain>>>> & {
    rules: readonly Plain[];
  };
  const known = new Map<string, Fraction | null>();

  function value(name: string): Fraction | null {
    const before = known.get(name);
    if (before !== undefined) return before;
    const made = worked(name);
    known.set(name, made);
    return made;
  }

  function worked(name: string): Fraction | null {
    const limit = file['limits']?.[name];
    if (limit) return fractionOf(limit['value']);
    const measure = file['measures']?.[name];
    if (measure) return ofMeasure(measure, name);
    const given = set[name] as { value?: number } | undefined;
    const steps = protocol.observations.get(name)?.stepsPerUnit;
    if (given?.value === undefined || !steps) return null;
    return new Fraction(Math.round(given.value * steps.valueOf())).div(steps);
  }

  function ofMeasure(measure: Plain, name: string): Fraction | null {
    if ('formula' in measure) {
      const found = work(String(measure['formula']), (each) => {
        const of = value(each);
        return of && { n: of.s * of.n, d: of.d };
      });
      return found && new Fraction(found.n, found.d).mul(measure['unit'] === '%' ? 100 : 1);
    }
    if ('curve' in measure) return onCurve(measure['curve'] as Plain);
    if ('score' in measure) {
      const parts = Object.entries(measure['score'] as Plain).map(([of, part]) => points(of, part));
      return parts.reduce((sum, each) => sum.add(each), new Fraction(0));
    }
    if ('choose' in measure) {
      const entries = measure['choose'] as readonly Plain[];
      const chosen = entries.find(({ when }) => when === undefined || holds(when as Plain));
      const use = chosen?.['use'];
      return typeof use === 'number' ? fractionOf(use) : value(String(use));
    }
    const firsts = (measure['first_known'] ?? []) as readonly string[];
    if (firsts.length === 0) throw new Error(`nothing here works out ${name}`);
    return firsts.map(value).find((each) => each !== null) ?? null;
  }

  /** Whether a condition of a choice between measures holds: its comparisons, and `any` of several. */
  const holds = (when: Plain): boolean =>
    Object.entries(when).every(([of, asked]) =>
      of === 'any' ? (asked as readonly Plain[]).some(holds) : compares(of, asked as Plain),
    );

  const compares = (of: string, asked: Plain): boolean =>
    Object.entries(asked).every(([how, to]) => {
      if (how === 'is') return choiceOf(of) === wordOf(to);
      const at = value(of);
      if (how === 'known') return (at !== null) === (wordOf(to) === 'yes');
      const side = at?.compare(isNumber(to) ? fractionOf(to) : (value(String(to)) as Fraction));
      const sides = sidesOf[how];
      if (!sides) throw new Error(`nothing here compares by ${how}`);
      return side !== undefined && sides.includes(Math.sign(side));
    });

  const choiceOf = (name: string): string =>
    wordOf(
      set[name] ??
        file['standing']?.[name]?.['if_not_stated'] ??
        protocol.observations.get(name)?.ifNotStated,
    );

  function onCurve({ of, points: pairs, beyond }: Plain): Fraction | null {
    const at = value(String(of));
    if (!at) return null;
    const line = (pairs as readonly (readonly unknown[])[]).map(
      (pair) => pair.map(fractionOf) as [Fraction, Fraction],
    );
    const after = line.findIndex(([x]) => x.compare(at) >= 0);
    const [from, to] = [line[after - 1], line[after]];
    if (to && to[0].equals(at)) return to[1];
    if (!from || !to) return beyond === 'hold' ? ((after === -1 ? line.at(-1) : line[0])?.[1] ?? null) : null;
    return from[1].add(to[1].sub(from[1]).mul(at.sub(from[0])).div(to[0].sub(from[0])));
  }

  function points(of: string, part: unknown): Fraction {
    if (!Array.isArray(part)) return new Fraction((part as Record<string, number>)[choiceOf(of)] ?? 0);
    const at = value(of) as Fraction;
    const band = (part as readonly Plain[]).find(({ at_most: most, below }) => {
      if (most !== undefined) return at.compare(fractionOf(most)) <= 0;
      return below === undefined || at.compare(fractionOf(below)) < 0;
    });
    return new Fraction(Number(band?.['points']));
  }

  const conditions = JSON.stringify([file.rules, file['applies_when'] ?? {}]);
  return {
    value,
    thresholds: (name) =>
      [...conditions.matchAll(new RegExp(`"${name}":(\\{[^}]*\\})`, 'g'))].flatMap(([, text]) =>
        Object.values(JSON.parse(text ?? '{}') as Plain)
          .flat()
          .filter(isNumber)
          .map(fractionOf),
      ),
    when: (rule) => JSON.stringify(file.rules.find((each) => each['rule'] === rule)?.['when']),
  };
}

const wordOf = (value: unknown): string => (value === true ? 'yes' : value === false ? 'no' : String(value));
