import { expect, test } from 'vitest';
import { proveRequirements } from '../../../src/index.ts';
import { subjectOfProtocol } from '../../../src/review/requirements/subject.ts';
import { noneBreaks } from '../../../src/review/requirements/whole/none-breaks.ts';
import { drawn as draw, type Drawn } from './drawn.ts';

/** `MANY=…` asks of more protocols. */
const many = Number(process.env.MANY ?? 25);
const kept = new Map<number, Drawn>();
function drawn(seed: number): Drawn {
  const known = kept.get(seed) ?? draw(seed);
  kept.set(seed, known);
  return known;
}

const seeds = [...Array(many).keys()].map((index) => index + 1);

test.each(seeds)('protocol %i: every verdict is that of asking every set and every pair', (seed) => {
  const { made, broken } = drawn(seed);
  const proofs = proveRequirements(made.compiled);
  const found = proofs.map(({ requirement, verdict }) => [requirement.name, verdict]);
  expect(found).toEqual(
    broken.map(({ requirement, isBroken }) => [requirement.name, isBroken ? 'refuted' : 'proven']),
  );
});

test.each(seeds)('protocol %i: asked of all sets at once, the answer is the same', (seed) => {
  const { made, broken } = drawn(seed);
  const subject = subjectOfProtocol(made.compiled.protocol, 'within_bounds');
  const found = broken.map(({ requirement }) => [requirement.name, noneBreaks({ subject, requirement })]);
  expect(found).toEqual(broken.map(({ requirement, isBroken }) => [requirement.name, !isBroken]));
});

/** Behind what is needed nothing can hide in them: no rule of them asks whether it is known. */
const neverBroken = 'asked_11';

test('the protocols that are asked break each requirement here and there, and keep it elsewhere', () => {
  const all = seeds.flatMap((seed) => drawn(seed).broken);
  const names = [...new Set(all.map(({ requirement }) => requirement.name))];
  expect(names).toContain(neverBroken);
  for (const name of names) {
    const own = all.filter(({ requirement }) => requirement.name === name);
    const ways = name === neverBroken ? 1 : 2;
    expect([name, new Set(own.map(({ isBroken }) => isBroken)).size]).toEqual([name, ways]);
  }
});
