import { withValue } from '../../document/edit.ts';
import { literalIn } from '../../logic/literal.ts';
import type { Path } from '../../problems/place.ts';
import type { NumberOperand, Observation, ScorePart } from '../../protocol/protocol.ts';
import { quantityOf } from '../../protocol/quantities.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import type { Change, Within } from './change.ts';
import { made, type Original } from './making.ts';

/** The points of each band and of each choice that is listed, one fewer and one more. */
export function* pointChanges(original: Original): Generator<Change> {
  for (const { how } of original.protocol.measures.values()) {
    for (const part of how.kind === 'score' ? how.parts : []) {
      if (part.kind === 'choices') {
        const { observation } = part;
        for (const [choice, points] of part.points)
          yield* moved([...part.path, choice], points, { observation, choice }, original);
      } else {
        for (const [index, { points }] of part.bands.entries())
          yield* moved([...part.path, index, 'points'], points, bandAt(part, index, original), original);
      }
    }
  }
}

function* moved(path: Path, points: number, within: Within | null, original: Original): Generator<Change> {
  for (const to of [points - 1, points + 1]) {
    const document = withValue(original.document, path, to);
    yield made(original, { kind: 'points', path, what: `${points} to ${to}`, document, within });
  }
}

/** The values that a band holds; one step more at a band's ends does no harm. */
function bandAt(
  { of, bands }: Extract<ScorePart, { kind: 'bands' }>,
  index: number,
  { protocol }: Original,
): Within | null {
  const observation = of.kind === 'observation' ? protocol.observations.get(of.name) : undefined;
  if (!observation) return null;
  const { low, high } = possibleRange(observation);
  const [from, to] = [bands[index - 1]?.to, bands[index]?.to].map((end) => end && stepsOf(end, observation));
  return { observation: observation.name, low: Math.floor(from ?? low), high: Math.ceil(to ?? high) };
}

function stepsOf(end: NumberOperand, { unit, stepsPerUnit }: Observation): number {
  return literalIn(end, quantityOf(unit)).constant.mul(stepsPerUnit).valueOf();
}
