import type { Protocol } from '../protocol/protocol.ts';
import { quantityOf } from '../protocol/quantities.ts';
import type { Context } from './context.ts';
import { ofNode, over1, type Node } from './linear.ts';
import { settledPresence, type NumberForm, type Presence } from './number-form.ts';
import { and, either, less, lessOrSame, not, sum, variable } from './operators.ts';
import { possibleRange } from '../vocabulary/possible-range.ts';

/** A node for each observation that is a number, and for each limit. */
export function numberNodes(protocol: Protocol): Map<string, Node> {
  const nodes = new Map<string, Node>();
  for (const observation of protocol.observations.values()) {
    if (observation.kind !== 'number') continue;
    const { low, high } = possibleRange(observation);
    const { name } = observation;
    nodes.set(name, {
      name,
      low: variable(`${name}:low`),
      high: variable(`${name}:high`),
      least: BigInt(low),
      most: BigInt(high),
    });
  }
  for (const { name, value, between } of protocol.limits.values()) {
    const [least, most] = between ?? [value, value];
    const input = variable(`${name}:value`);
    nodes.set(name, { name, low: input, high: input, least: BigInt(least), most: BigInt(most) });
  }
  return nodes;
}

/** A limit as a number: known exactly, and nothing can be missing for it. */
export function limitForm(name: string, protocol: Protocol, nodes: ReadonlyMap<string, Node>): NumberForm {
  const limit = protocol.limits.get(name);
  const node = nodes.get(name);
  if (!limit || !node) throw new Error(`no limit is called ${name}`);
  const quantity = limit.unit ? quantityOf(limit.unit) : ('plain' as const);
  return { ratio: over1(ofNode(node, limit.stepsPerUnit)), quantity, presence: settledPresence };
}

/** What may be missing for an observation. */
export function observationPresence(
  name: string,
  { protocol, writer }: Context,
  nodes: ReadonlyMap<string, Node>,
): Presence {
  const observation = protocol.observations.get(name);
  const known = variable(`${name}:known`);
  const node = nodes.get(name);
  const may = (observation?.choices ?? []).map(({ choice }) =>
    either(variable(`${name}:may:${choice}`), 1, 0),
  );
  const open = node
    ? less(node.low, node.high)
    : observation?.kind === 'several'
      ? not(known)
      : lessOrSame(2, sum(may));
  const isOpen = writer.define(`${name}:open`, open);
  if (observation?.role !== 'helps') return { ...settledPresence, needsOpen: isOpen, known };
  const missing = variable(`${name}:missing`);
  return { ...settledPresence, helpsMissing: missing, helpsOpen: and(not(missing), isOpen), known };
}
