import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Compiled } from '../../../src/outcome/compile.ts';
import type { Bounds } from '../../../src/series/bounds.ts';
import type { AskedSets } from '../../../src/targets/smt-lib/sets.ts';
import { examples } from '../../agreement/generators.ts';
import { boundsOf, protocolOf } from '../../agreement/kit.ts';
import { ladderText } from '../../agreement/protocols.ts';
import { seed } from '../../agreement/settings.ts';
import { apart, scriptFor } from './held.ts';
import { judges } from './judges.ts';

// Made-up protocols, and sets and series of values, ranges, earlier values and nothing: what the text says of sets must hold of each
// of them, and with the inputs held to one of them every answer must be the evaluator's.

const runs = 40;
const setsEach = 5;

interface Asked {
  readonly compiled: Compiled;
  readonly sets: AskedSets;
  readonly all: readonly Float64Array[];
  readonly told: readonly string[];
}

const exact = ({ facts, narrow, wide }: Bounds): boolean =>
  narrow === wide &&
  [...facts.present.values()].every(
    ({ state, range }) => !['given', 'standing'].includes(state) || range === null || range[0] === range[1],
  );

/** What a set is asked as: as anything at all, and also as something more special where it is that. */
function askedOf(text: string, sets: readonly unknown[]): readonly Asked[] {
  const compiled = protocolOf(text, ladderText);
  const read = sets.map((set) => ({
    set: JSON.stringify(set),
    bounds: boundsOf(compiled, JSON.stringify(set)),
  }));
  const of = (given: AskedSets['given'], some: typeof read): Asked => ({
    compiled,
    sets: { given, limits: 'within_bounds' },
    all: some.flatMap(({ bounds: { narrow, wide } }) => (narrow === wide ? [narrow] : [narrow, wide])),
    told: some.flatMap(({ set, bounds: { narrow, wide } }) =>
      narrow === wide ? [set] : [`narrow ${set}`, `wide ${set}`],
    ),
  });
  const partial = read.filter(({ bounds }) => exact(bounds));
  const complete = partial.filter(({ bounds }) =>
    [...bounds.facts.present.values()].every(
      ({ state, instead }) => instead === null && (state === 'given' || state === 'standing'),
    ),
  );
  const noBacks = [...compiled.protocol.measures.values()].every(({ how }) => !('over' in how));
  return [of('any', read), of('partial', partial), ...(noBacks ? [of('complete', complete)] : [])];
}

const asked = fc
  .sample(examples(setsEach), { numRuns: runs, seed })
  .flatMap(({ made, sets }) => askedOf(made.text, sets))
  .filter(({ all }) => all.length > 0);

test.for(judges)(
  'every set that can be read is one of the sets, and every answer is the evaluator’s ($name)',
  ({ ask }, context) => {
    const answers = ask(
      asked.map(({ compiled, sets, all }) => scriptFor(compiled, sets, all)),
      context,
    );
    const each = asked.flatMap(({ sets, told }) => told.map((what) => `${sets.given}: ${what}`));
    expect(apart(answers).map((index) => each[index])).toEqual([]);
    const count = (given: AskedSets['given']): number =>
      asked.filter(({ sets }) => sets.given === given).reduce((total, { all }) => total + all.length, 0);
    expect(count('any')).toBeGreaterThan(runs * setsEach);
    expect(count('partial')).toBeGreaterThan(runs);
    expect(count('complete')).toBeGreaterThan(runs / 3);
  },
);
