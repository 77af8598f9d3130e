import fc from 'fast-check';
import { parse, stringify } from 'yaml';
import { expect, test } from 'vitest';
import { evaluate, readProtocol, readSet, type Outcome } from '../../src/index.ts';
import { bundledLadder, bundledNames, bundledText } from '../bundled.ts';

// Order means nothing: not of rules, of keys, or of sets.

const ladder = bundledLadder();
const sample = JSON.parse(bundledText('sample_patient.json')) as Record<string, unknown>;

/** The same value with every key, and where told every list, in another order. */
function shuffled(value: unknown, next: () => number, lists: ReadonlySet<string>, key = ''): unknown {
  const mixed = <T>(all: readonly T[]): T[] =>
    all
      .map((each) => [next(), each] as const)
      .sort((a, b) => a[0] - b[0])
      .map(([, each]) => each);
  if (Array.isArray(value)) {
    const all = (value as unknown[]).map((each) => shuffled(each, next, lists));
    return lists.has(key) ? mixed(all) : all;
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    mixed(Object.entries(value)).map(([name, each]) => [name, shuffled(each, next, lists, name)]),
  );
}

/** What an outcome says, apart from the digest and the order in which things are listed. */
function said({ level, rules, measures, take_first, missing, advice }: Outcome): unknown {
  const byName = <T extends { rule: string }>(all: readonly T[]): T[] =>
    [...all].sort((a, b) => (a.rule < b.rule ? -1 : 1));
  const states = byName(rules).map(({ rule, state }) => [rule, state]);
  const listed = Object.entries(measures).map(([name, measure]) => [
    name,
    { ...measure, ...('waits_for' in measure ? { waits_for: [...measure.waits_for].sort() } : {}) },
  ]);
  return {
    level,
    states,
    measures: Object.fromEntries(listed) as unknown,
    take_first: [...take_first].sort(),
    missing: [...missing].sort(),
    advice: byName(advice).map(({ rule }) => rule),
  };
}

function outcome(text: string, set: unknown): Outcome {
  const { protocol, problems } = readProtocol('protocol.yaml', text, { ladder });
  if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
  const { series } = readSet('set.json', JSON.stringify(set), protocol);
  if (!series) throw new Error('the set has problems');
  return evaluate(protocol, series);
}

test.each(bundledNames)('%s: rules, keys and sets in another order say the same', (name) => {
  const text = bundledText(`${name}/protocol.yaml`);
  const plain = parse(text) as unknown;
  const before = said(outcome(text, sample));
  const lists = new Set(['rules', 'all', 'any', 'none', 'of', 'needs', 'helps', 'sets']);
  fc.assert(
    fc.property(fc.array(fc.nat(), { minLength: 50, maxLength: 50 }), (numbers) => {
      let at = 0;
      const next = (): number => numbers[at++ % numbers.length] as number;
      const changed = stringify(shuffled(plain, next, lists));
      expect(said(outcome(changed, shuffled(sample, next, lists)))).toEqual(before);
    }),
    { numRuns: 8 },
  );
});
