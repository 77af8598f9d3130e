import type { ScorePart } from '../protocol/protocol.ts';
import { literalIn } from '../logic/literal.ts';
import { exactly } from './amounts.ts';
import { compare } from './exact.ts';
import type { Wording } from './wording.ts';
import type { View } from './view.ts';

/** The lowest and the highest points that a part can give. */
interface Points {
  readonly low: number;
  readonly high: number;
}

export function pointsReader(part: ScorePart, wording: Wording): (view: View) => Points {
  return part.kind === 'bands' ? bandPoints(part, wording) : choicePoints(part, wording);
}

function bandPoints(
  { of, bands }: Extract<ScorePart, { kind: 'bands' }>,
  { amounts }: Wording,
): (view: View) => Points {
  const { amount, quantity } = amounts.of(of);
  const sure = of.kind === 'measure' ? amounts.sure(of.name) : null;
  const ends = bands.map(({ to, included, points }) => ({
    to: to && exactly(literalIn(to, quantity).constant),
    included,
    points,
  }));
  const all = pointsOf(ends.map(({ points }) => points));
  return (view) => {
    if (sure && sure(view.result) === 0) return all;
    const { low, high } = amount(view);
    const touched: number[] = [];
    for (const { to, included, points } of ends) {
      const lowSide = to ? compare(low, to) : -1;
      if (lowSide > 0 || (lowSide === 0 && !included)) continue;
      touched.push(points);
      const highSide = to ? compare(high, to) : -1;
      if (highSide < 0 || (highSide === 0 && included)) break;
    }
    return pointsOf(touched);
  };
}

function choicePoints(
  { observation: name, points }: Extract<ScorePart, { kind: 'choices' }>,
  { protocol, choices }: Wording,
): (view: View) => Points {
  const observation = protocol.observations.get(name);
  const worth = (observation?.choices ?? []).map(({ choice }) => points.get(choice) ?? 0);
  const { may, sure } = choices(name);
  if (observation?.kind !== 'several') {
    return ({ result }) => pointsOf(worth.filter((_, index) => result[may[index] as number] !== 0));
  }
  return ({ result }) => {
    let [low, high] = [0, 0];
    worth.forEach((each, index) => {
      const [in_, maybe] = [result[sure[index] as number] !== 0, result[may[index] as number] !== 0];
      if (each > 0 ? in_ : maybe) low += each;
      if (each > 0 ? maybe : in_) high += each;
    });
    return { low, high };
  };
}

const pointsOf = (all: readonly number[]): Points => ({ low: Math.min(...all), high: Math.max(...all) });
