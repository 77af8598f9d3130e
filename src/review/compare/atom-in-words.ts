import { quantityWords } from '../../protocol/checks/in-words.ts';
import type { NamedOperand, NumberComparison, Operand, Protocol } from '../../protocol/protocol.ts';
import { listed, plainWords } from '../../protocol/words.ts';
import type { Asking } from './asking.ts';
import { stands, type Atom } from './atoms.ts';

const holdsWords = { below: 'below', above: 'above', at_most: 'at most', at_least: 'at least' } as const;
const failsWords = { below: 'at least', above: 'at most', at_most: 'above', at_least: 'below' } as const;

/** What a settled comparison says: `estimated mean below 65 mmHg`; where it does not hold, `estimated mean at least 65 mmHg`. */
export function atomInWords(
  { comparison, compiled }: Atom,
  stand: 1 | 2 | 3,
  { before, sameMeasure }: Pick<Asking, 'before' | 'sameMeasure'>,
): string {
  const { protocol } = compiled;
  if (comparison.kind !== 'compare') {
    const observation = protocol.observations.get(comparison.observation);
    const title = observation?.title ?? comparison.observation;
    if (comparison.kind !== 'one_of') {
      const is = comparison.is === (stand === stands.holds);
      return `${title} ${is ? '' : 'not '}${comparison.kind}`;
    }
    const { choices } = comparison;
    const chosen = (observation?.choices ?? []).filter(({ choice }) => choices.includes(choice));
    return `${title} ${stand === stands.holds ? '' : 'not '}${listed(
      chosen.map((each) => each.title),
      'or',
    )}`;
  }
  const { subject, how, to } = comparison;
  const side = sameMeasure(subject) ? '' : before.includes(compiled) ? ' (as before)' : ' (as now)';
  const title = `${operandTitle(subject, protocol)}${side}`;
  if (stand === stands.lacks) return `${title} without a value`;
  return `${title} ${(stand === stands.holds ? holdsWords : failsWords)[how]} ${toWords(comparison, protocol, to)}`;
}

function toWords({ subject }: NumberComparison, protocol: Protocol, to: Operand): string {
  if (to.kind === 'number') return quantityWords(to.value, to.unit ?? unitOf(subject, protocol));
  const limit = to.kind === 'limit' ? protocol.limits.get(to.name) : undefined;
  if (!limit) return operandTitle(to, protocol);
  return `${quantityWords(limit.stepsPerUnit.inverse().mul(limit.value), limit.unit)} (${limit.title})`;
}

const unitOf = ({ kind, name }: NamedOperand, { observations, measures }: Protocol) =>
  (kind === 'measure' ? measures.get(name)?.unit : observations.get(name)?.unit) ?? null;

function operandTitle(operand: Operand, { observations, measures, limits }: Protocol): string {
  if (operand.kind === 'number') return operand.value.toString();
  const found =
    operand.kind === 'measure'
      ? measures.get(operand.name)
      : operand.kind === 'limit'
        ? limits.get(operand.name)
        : observations.get(operand.name);
  return found?.title ?? plainWords(operand.name);
}
