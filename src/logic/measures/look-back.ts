import Fraction from 'fraction.js';
import type { LookBack, Measure, Protocol, Quantity } from '../../protocol/protocol.ts';
import { noDimension, quantityOf } from '../../protocol/quantities.ts';
import { unitByWord, type Unit } from '../../vocabulary/units.ts';
import { never } from '../inputs.ts';
import { ofNode, over1, type Node } from '../linear.ts';
import { and, less, not, or, variable, type Logical } from '../operators.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import type { NumberForm } from '../number-form.ts';

/** The most sets that a window is reckoned to hold. */
const mostSets = 1_000_000n;
const minute = 60_000;

/** A look back: its value comes in as inputs that the series has already looked up. */
export function lookBackForm(how: LookBack, measure: Measure, protocol: Protocol): NumberForm {
  const input = (part: string): Logical => variable(`${measure.name}:${part}`);
  const { least, most, scale, quantity } = rangeOf(how, protocol);
  const node: Node = { name: measure.name, low: input('low'), high: input('high'), least, most };
  const role = protocol.observations.get(how.observation ?? '')?.role;
  const sure = variable(`${measure.name}:sure`);
  const isRange = and(sure, less(node.low, node.high));
  const presence = {
    sure,
    maybe: variable(`${measure.name}:maybe`),
    helpsMissing: not(sure),
    // Whether the present set counts can itself wait for a need: then taking that need moves the look back.
    needsOpen: or(how.where ? input('open') : false, role === 'helps' ? false : isRange),
    helpsOpen: role === 'helps' ? isRange : false,
    known: sure,
  };
  const top = ofNode(node, scale);
  if (how.kind !== 'average') return { ratio: over1(top), quantity, presence };
  const count: Node = {
    name: `${measure.name}:count`,
    low: input('count'),
    high: input('count'),
    least: 1n,
    most: mostSets,
  };
  return { ratio: { top, bottom: ofNode(count) }, quantity, presence };
}

interface LookBackRange {
  readonly least: bigint;
  readonly most: bigint;
  readonly scale: Fraction;
  readonly quantity: Quantity;
}

function rangeOf(how: LookBack, protocol: Protocol): LookBackRange {
  if (how.kind === 'count')
    return { least: 0n, most: mostSets, scale: new Fraction(1), quantity: noDimension };
  if (how.kind === 'minutes_since' || how.kind === 'held') {
    const quantity = quantityOf(unitByWord('min') as Unit);
    return { least: 0n, most: BigInt(never), scale: new Fraction(minute), quantity };
  }
  const observation = protocol.observations.get(how.observation ?? '');
  if (!observation) return { least: 0n, most: 0n, scale: new Fraction(1), quantity: noDimension };
  const { low, high } = possibleRange(observation);
  const [least, most] = [BigInt(low), BigInt(high)];
  const common = { scale: observation.stepsPerUnit, quantity: quantityOf(observation.unit) };
  if (how.kind === 'change') return { least: least - most, most: most - least, ...common };
  if (how.kind !== 'average') return { least, most, ...common };
  const far = (value: bigint): bigint => value * mostSets;
  return { least: least < 0n ? far(least) : least, most: most > 0n ? far(most) : most, ...common };
}
