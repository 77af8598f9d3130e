import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stringify } from 'yaml';
import { drawn } from './draw.ts';
import { report } from './found.ts';
import { drawExample, examples, type Example } from './generators.ts';
import { judged, judgedApart } from './judged.ts';
import { askKit, type KitAnswer } from './kit.ts';
import { ladderText, levels, type Plain } from './protocols.ts';
import { runs, seed, sets as setsOfEach } from './settings.ts';
import { countProtocol, countSet, noShares, shortfalls, shown } from './shares.ts';
import { asSeries, neverMet, reordered, splitSets, withRuleNeverMet } from './variants.ts';

const timeout = 60_000 + runs * setsOfEach * 200;
const settings = { numRuns: runs, seed };
const print = (text: string): boolean =>
  process.stdout.write(`agreement, seed ${seed}, ${runs} protocols: ${text}\n`);

const asked = (protocol: Plain, set: unknown): KitAnswer =>
  askKit(stringify(protocol), ladderText, JSON.stringify(set));

test('the made-up protocols and sets cover the language', { timeout }, () => {
  const shares = noShares();
  const count = (example: Example): void => {
    countProtocol(shares, example);
    for (const set of example.sets) countSet(shares, example, set, judged(example, set));
  };
  // Shares are of many protocols: of fewer, one that is rare may be lacking by chance.
  fc.assert(fc.property(examples(setsOfEach), count), { ...settings, numRuns: Math.max(runs, 200) });
  print(shown(shares));
  expect(shortfalls(shares)).toEqual([]);
});

test('the kit says what the judge says, and nothing that is not so', { timeout }, () => {
  let [sets, rules, looser] = [0, 0, 0];
  const excused: string[] = [];
  const agrees = (example: Example): void => {
    const found = judgedApart(example);
    if (found.wrong.length) throw new Error(found.wrong.join('\n'));
    sets += example.sets.length;
    rules += found.rules;
    looser += found.looser;
    excused.push(...found.excused);
  };
  report(fc.check(fc.property(examples(setsOfEach), agrees), settings));
  const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(2)} %`;
  print(
    `${percent(looser, rules)} of rules left undecided, ${percent(excused.length, sets)} of sets excused`,
  );
  expect(looser / rules).toBeLessThan(0.05);
  expect(excused.length / sets).toBeLessThan(0.01);
});

const third = { numRuns: Math.ceil(runs / 3), seed };

test('the order of rules, keys and sets means nothing', { timeout }, () => {
  const pairs = drawn((draw) => {
    const example = drawExample(draw, 3);
    const { protocol } = example.made;
    const other = reordered(draw, protocol) as Plain;
    return { example, other, sets: example.sets.map((set) => reordered(draw, set)) };
  });
  const property = fc.property(pairs, ({ example, other, sets }) => {
    for (const [index, set] of example.sets.entries())
      expect(asked(other, sets[index])).toEqual(asked(example.made.protocol, set));
  });
  fc.assert(property, third);
});

test('a rule that is never met changes no other rule and no level', { timeout }, () => {
  const property = fc.property(examples(3), ({ made, sets }) => {
    const name = made.subjects[0]?.name ?? '';
    const more = withRuleNeverMet(made.protocol, name, levels[3]);
    for (const set of sets) {
      const { rules, ...whole } = asked(more, set);
      const { [neverMet]: added, ...others } = rules;
      expect(added?.state).toBe('not_met');
      expect({ ...whole, rules: others }).toEqual(asked(made.protocol, set));
    }
  });
  fc.assert(property, third);
});

test('a set told in two parts of one time is the same set', { timeout }, () => {
  const pairs = drawn((draw) => {
    const example = drawExample(draw, 3);
    return { example, parts: example.sets.map((set) => splitSets(draw, asSeries(set))) };
  });
  const property = fc.property(pairs, ({ example, parts }) => {
    for (const [index, set] of example.sets.entries())
      expect(asked(example.made.protocol, parts[index])).toEqual(asked(example.made.protocol, asSeries(set)));
  });
  fc.assert(property, third);
});
