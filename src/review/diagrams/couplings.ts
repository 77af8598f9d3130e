import { constantsOf } from './constants.ts';
import type { Operand, Protocol } from '../../protocol/protocol.ts';
import { comparisonsIn, conditionsOf, operandsIn } from '../../protocol/walk.ts';

/**
 * The numbers that are reckoned with, or compared with one another: each of their steps can matter. With how often they are.
 * All others are only compared with numbers that stand still.
 */
export function couplingsOf(protocols: readonly Protocol[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const protocol of protocols) noteCouplings(protocol, found);
  return found;
}

function noteCouplings(protocol: Protocol, found: Map<string, number>): void {
  const note = (operand: Operand): void => {
    if (operand.kind !== 'observation' || protocol.observations.get(operand.name)?.kind !== 'number') return;
    found.set(operand.name, (found.get(operand.name) ?? 0) + 1);
  };
  const noteName = (name: string): void => note({ kind: 'observation', name });
  for (const { how } of protocol.measures.values()) {
    if (how.kind === 'formula') for (const each of operandsIn(how.formula)) note(each);
    if (how.kind === 'curve') note(how.of);
    if (how.kind === 'choose') for (const { use } of how.entries) note(use);
    if (how.kind === 'first_known') for (const each of how.of) note(each);
    if ('over' in how && how.kind !== 'count' && how.observation !== null) noteName(how.observation);
  }
  for (const condition of conditionsOf(protocol)) {
    for (const each of comparisonsIn(condition)) {
      if (each.kind !== 'compare' || constantsOf(each.to, protocol)) continue;
      note(each.subject);
      note(each.to);
    }
  }
  for (const { lower, higher } of protocol.contradictions) [lower, higher].forEach(noteName);
}
