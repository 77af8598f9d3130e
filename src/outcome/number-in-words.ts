import type { Operand, Protocol } from '../protocol/protocol.ts';
import type { Amount, Amounts } from './amounts.ts';
import { isNever } from './exact.ts';
import { alone, formatOf, type Format } from './shown-number.ts';
import { hasValue, stateInWords, type View } from './view.ts';

/** Writes numbers as they stand in the brackets of a sentence. */
export interface NumberWriter {
  /** With its name: `systolic 104`; `diastolic not taken`; `points for breathing 0 to 3`. */
  named(operand: Operand): (view: View) => string;
  /** With its name and its unit: `heart rate 95 /min`. */
  withUnit(operand: Operand): (view: View) => string;
  /** What it is called: in full, or in short where an observation has a short name. */
  title(operand: Operand, short: boolean): string;
}

export function numberWriter(protocol: Protocol, amounts: Amounts): NumberWriter {
  function title(operand: Operand, short: boolean): string {
    switch (operand.kind) {
      case 'number':
        return '';
      case 'observation': {
        const observation = protocol.observations.get(operand.name);
        return (short ? observation?.short : observation?.title) ?? operand.name;
      }
      case 'limit':
        return protocol.limits.get(operand.name)?.title ?? operand.name;
      case 'measure':
        return protocol.measures.get(operand.name)?.title ?? operand.name;
    }
  }

  function written(operand: Operand, format: Format, unit: boolean): (view: View) => string {
    const { amount } = amounts.of(operand);
    const text = (view: View): string =>
      unit ? format.withUnit(amountText(amount(view), format)) : amountText(amount(view), format);
    if (operand.kind === 'number') return text;
    const name = withColon(title(operand, true));
    const sure = operand.kind === 'measure' ? amounts.sure(operand.name) : null;
    const observation = operand.kind === 'observation' ? protocol.observations.get(operand.name) : undefined;
    return (view) => {
      if (observation && !hasValue(observation.name, view))
        return `${name} ${stateInWords(observation, view)}`;
      if (sure && sure(view.result) === 0) return `${name} without a value`;
      return `${name} ${text(view)}`;
    };
  }

  const formatFor = (operand: Operand): Format => formatOf(amounts.of(operand).unit);
  return {
    title,
    named: (operand) => written(operand, formatFor(operand), operand.kind === 'number'),
    withUnit: (operand) => written(operand, formatFor(operand), true),
  };
}

/** A name that ends with a digit is set off from the number after it: `points on scale 2: 3`. */
const withColon = (name: string): string => (/\d$/.test(name) ? `${name}:` : name);

/** A number that is known, or the range in which it lies: `104`, `96 to 104`, `240 or more, perhaps never`. */
function amountText({ low, high }: Amount, format: Format): string {
  const from = alone(low, format);
  if (low === high || isNever(low)) return from;
  return isNever(high) ? `${from} or more, perhaps never,` : `${from} to ${alone(high, format)}`;
}
