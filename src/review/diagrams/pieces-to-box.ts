import type { Absence, Box } from '../box.ts';
import type { Pieces } from './find-set-in.ts';
import type { Space } from './space.ts';
import { stepsOf, type Variable } from './variables.ts';

/**
 * A set as a box of one. Of a stretch that nothing tells apart it takes the step nearest to the ordinary one; of a step between two sets
 * `beside` takes the steps that touch.
 */
export function piecesToBox(
  { variables, protocol }: Space,
  pieces: Pieces,
  beside: { readonly along: number; readonly end: 'low' | 'high' } | null = null,
): Box {
  const ranges = new Map<string, readonly [number, number]>();
  const choices = new Map<string, readonly string[]>();
  const absent = new Map<string, Absence>();
  variables.forEach((variable, place) => {
    const { observation, member, values, lacks } = variable;
    const { name, kind } = observation;
    const piece = pieces[place] as number;
    const lack = lacks[piece - values];
    if (member !== null) {
      choices.set(`${name}:${member}`, [piece === 1 ? 'yes' : 'no']);
      return;
    }
    if (lack) absent.set(name, lack.unobtainable ? 'unobtainable' : lack.assumed ? 'assumed' : 'missing');
    if (kind === 'number') {
      const end = beside?.along === place ? beside.end : null;
      const step = lack ? 0 : stepIn(variable, piece, end);
      ranges.set(name, [step, step]);
    } else if (kind !== 'several') {
      choices.set(name, [lack ? '' : (protocol.observations.get(name)?.choices[piece]?.choice ?? '')]);
    }
  });
  return { ranges, choices, absent };
}

function stepIn(variable: Variable, piece: number, end: 'low' | 'high' | null): number {
  const span = stepsOf(variable, piece);
  if (end) return span[end];
  const { ordinary } = variable.observation;
  return Math.min(span.high, Math.max(span.low, typeof ordinary === 'number' ? ordinary : span.low));
}
