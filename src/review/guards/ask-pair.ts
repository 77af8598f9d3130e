import { levelFrom } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import { boxToInputs, type Box } from '../box.ts';
import type { Asked } from '../search-boxes.ts';
import type { Pair, TruthPair } from './pair.ts';

/** The results of both protocols for one box. */
interface Results {
  readonly before: Float64Array;
  readonly after: Float64Array;
}

/**
 * Whether a protocol and the changed one differ for every set of a box, for none, or that is open.
 *
 * `loud`: only a set that the protocol is surely for is looked for, and one that shows in a rule or in the level, not only in what
 * explains a rule that is not met. A box in which none of `reads` varies is a single
 * set as far as the answers go, and is answered by comparing them.
 */
export function askPair(
  pair: Pair,
  box: Box,
  { loud, reads }: { readonly loud: boolean; readonly reads: ReadonlySet<string> },
): Asked {
  const { before, after } = pair;
  const results: Results = {
    before: before.evaluator.run(boxToInputs(box, before.protocol, before.logic.inputs)),
    after: after.evaluator.run(boxToInputs(box, after.protocol, after.logic.inputs)),
  };
  if (loud && before.applies.possible(results.before) === 0) return 'no';
  if (pair.inside && surelySame(pair.inside, results)) return 'no';
  const answer = compared(pair, results, { single: isSingle(box, reads), loud });
  if (answer !== 'yes' || !loud || before.applies.certain(results.before) !== 0) return answer;
  return 'open';
}

function compared(
  pair: Pair,
  results: Results,
  { single, loud }: { readonly single: boolean; readonly loud: boolean },
): Asked {
  const shown = loud ? pair.truths : [...pair.truths, ...pair.explained];
  if (shown.some((truth) => surelyDiffers(truth, results))) return 'yes';
  const [first, second] = [pair.before.levels, pair.after.levels].map((levels, index): Span =>
    spanOf(levels, index === 0 ? results.before : results.after),
  ) as [Span, Span];
  if ((first.low > second.high || second.low > first.high) && appliesTo(pair, results, 'certain'))
    return 'yes';
  if (single) return differsNow(pair, shown, results) ? 'yes' : pair.beyondSets ? 'open' : 'no';
  if (
    pair.notReliable.length > 0 ||
    ![...pair.truths, ...pair.explained].every((truth) => surelySame(truth, results))
  )
    return 'open';
  const levelsSame =
    (first.low === second.high && second.low === first.high) || !appliesTo(pair, results, 'possible');
  return !pair.levelOf || levelsSame || impossible(pair.levelOf, results) ? 'no' : 'open';
}

/** The lowest and the highest level that any set of a box calls for. */
interface Span {
  readonly low: number;
  readonly high: number;
}

function spanOf({ raised, could, floor }: Compiled['levels'], result: Float64Array): Span {
  return { low: Math.max(floor(result), 0), high: Math.max(raised(result), could(result), 0) };
}

/** Whether both protocols are for the patient, surely or possibly; outside of that there is no level. */
function appliesTo(
  { before, after }: Pick<Pair, 'before' | 'after'>,
  results: Results,
  how: 'certain' | 'possible',
): boolean {
  return before.applies[how](results.before) !== 0 && after.applies[how](results.after) !== 0;
}

/** Whether a single set comes out otherwise. */
function differsNow(
  { before, after, notReliable }: Pair,
  shown: readonly TruthPair[],
  results: Results,
): boolean {
  const readings = [...shown.flatMap(({ certain, possible }) => [certain, possible]), ...notReliable];
  if (readings.some((each) => each.before(results.before) !== each.after(results.after))) return true;
  if (!appliesTo({ before, after }, results, 'possible')) return false;
  const [first, second] = [
    levelFrom(before, results.before, results.before),
    levelFrom(after, results.after, results.after),
  ];
  return (['atLeast', 'couldBe', 'settled'] as const).some((key) => first[key] !== second[key]);
}

const impossible = ({ possible }: TruthPair, { before, after }: Results): boolean =>
  possible.before(before) === 0 && possible.after(after) === 0;

function surelySame({ certain, possible }: TruthPair, results: Results): boolean {
  if (certain.before(results.before) !== 0 && certain.after(results.after) !== 0) return true;
  return impossible({ certain, possible }, results);
}

function surelyDiffers({ certain, possible }: TruthPair, { before, after }: Results): boolean {
  return (
    (certain.before(before) !== 0 && possible.after(after) === 0) ||
    (certain.after(after) !== 0 && possible.before(before) === 0)
  );
}

function isSingle({ ranges, choices, absent }: Box, reads: ReadonlySet<string>): boolean {
  for (const [name, [low, high]] of ranges)
    if (low !== high && reads.has(name) && !absent?.has(name)) return false;
  for (const [name, values] of choices) {
    const owner = name.split(':')[0] as string;
    if (values.length > 1 && reads.has(owner) && !absent?.has(owner)) return false;
  }
  return true;
}
