import type { Measure, MeasureHow, ScorePart } from '../../protocol/protocol.ts';
import { noDimension } from '../../protocol/quantities.ts';
import { ofNode, over1 } from '../linear.ts';
import { opposite, difference, truth, type Truth } from '../arithmetic.ts';
import { either, highest, lowest, not, or, and, sum, variable, type Logical } from '../operators.ts';
import { joined, type NumberForm, type Presence } from '../number-form.ts';
import type { Context } from '../context.ts';
import { stepName } from '../logic.ts';
import { literalIn } from '../literal.ts';

/** The lowest and the highest points of one part, over everything that is still possible. */
interface PartPoints {
  readonly low: Logical;
  readonly high: Logical;
  readonly least: bigint;
  readonly most: bigint;
  readonly presence: Presence;
}

/** A score: the sum of its parts, each over every band and choice that is still possible. */
export function scoreForm(
  how: Extract<MeasureHow, { kind: 'score' }>,
  measure: Measure,
  context: Context,
): NumberForm {
  const owner = stepName(measure.path);
  const { writer } = context;
  const parts = how.parts.map((part) =>
    part.kind === 'bands' ? bandPoints(part, context) : choicePoints(part, context),
  );
  const total = (side: 'low' | 'high'): Logical =>
    writer.define(`${owner}:${side}`, sum(parts.map((part) => part[side])));
  const end = (side: 'least' | 'most'): bigint => parts.reduce((all, part) => all + part[side], 0n);
  const node = writer.node(
    { name: owner, low: total('low'), high: total('high'), least: end('least'), most: end('most') },
    owner,
    [],
  );
  const presence = { ...joined(parts.map((part) => part.presence)), sure: true, maybe: true };
  return { ratio: over1(ofNode(node)), quantity: noDimension, presence };
}

function bandPoints(part: Extract<ScorePart, { kind: 'bands' }>, context: Context): PartPoints {
  const owner = stepName(part.path);
  const of = context.form(part.of);
  let before: Truth = truth(false);
  const touched = part.bands.map((band, index) => {
    const reached = opposite(before);
    if (!band.to) return reached.possible;
    const edge = over1(literalIn(band.to, of.quantity));
    const gap = difference(edge, of.ratio, context.arithmetic, `${owner}/${index}`);
    const here = context.arithmetic.atLeastZero(gap, !band.included, `${owner}/${index}`);
    before = here;
    return and(reached.possible, here.possible);
  });
  const open = not(of.presence.sure);
  return points(
    owner,
    part.bands.map((band, index) => [or(touched[index] as Logical, open), band.points]),
    of.presence,
    context,
  );
}

/** The lowest and highest points among those that are still possible; at least one always is. */
function points(
  owner: string,
  all: readonly (readonly [Logical, number])[],
  presence: Presence,
  context: Context,
): PartPoints {
  const [least, most] = [Math.min(...all.map(([, each]) => each)), Math.max(...all.map(([, each]) => each))];
  const side = (join: typeof lowest, otherwise: number): Logical =>
    join(all.map(([touched, each]) => (each === otherwise ? each : either(touched, each, otherwise))));
  const low = context.writer.define(`${owner}:low`, side(lowest, most));
  const high = context.writer.define(`${owner}:high`, side(highest, least));
  return { low, high, least: BigInt(least), most: BigInt(most), presence };
}

function choicePoints(part: Extract<ScorePart, { kind: 'choices' }>, context: Context): PartPoints {
  const owner = stepName(part.path);
  const observation = context.protocol.observations.get(part.observation);
  const presence = context.presenceOf(part.observation);
  const flag = (kind: 'may' | 'sure', choice: string): Logical =>
    variable(`${part.observation}:${kind}:${choice}`);
  const choices = (observation?.choices ?? []).map(({ choice }) => choice);
  const worth = (choice: string): number => part.points.get(choice) ?? 0;
  if (observation?.kind !== 'several') {
    return points(
      owner,
      choices.map((choice) => [flag('may', choice), worth(choice)]),
      presence,
      context,
    );
  }
  const counted = choices.filter((choice) => worth(choice) !== 0);
  // A choice that may be in adds its points to one end, one that surely is to both.
  const side = (low: boolean): Logical =>
    sum(
      counted.map((choice) =>
        either(flag(worth(choice) > 0 === low ? 'sure' : 'may', choice), worth(choice), 0),
      ),
    );
  const end = (low: boolean): number =>
    counted.reduce((total, choice) => total + (worth(choice) < 0 === low ? worth(choice) : 0), 0);
  return {
    low: context.writer.define(`${owner}:low`, side(true)),
    high: context.writer.define(`${owner}:high`, side(false)),
    least: BigInt(end(true)),
    most: BigInt(end(false)),
    presence,
  };
}
