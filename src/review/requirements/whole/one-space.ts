import { Space } from '../../diagrams/space.ts';
import type { Condition, Measure, Partition, Protocol } from '../../../protocol/protocol.ts';
import type { Part, Subject } from '../subject.ts';

/**
 * The sets of a subject, as diagrams ask them. Several protocols are made one for it, which is only asked what it reads, and never read
 * with. `mayLack`: the observations that a set may have no value of.
 */
export function oneSpace(subject: Subject, mayLack: ReadonlySet<string>): Space {
  const [first, ...others] = subject.parts.map(({ protocol }) => protocol) as [Protocol, ...Protocol[]];
  const one = others.length === 0 ? first : together(subject);
  return new Space(one, (name) => mayLack.has(name));
}

function together({ parts, observations, contradictions }: Subject): Protocol {
  const own = parts.map(withOwnNames);
  const [first] = own as [Protocol, ...Protocol[]];
  const applies = own.flatMap(({ applies: each }): Condition[] => (each ? [each] : []));
  return {
    ...first,
    applies: null,
    observations,
    contradictions: contradictions.filter(
      ({ lower, higher }) => observations.has(lower) && observations.has(higher),
    ),
    limits: new Map(own.flatMap(({ limits }) => [...limits])),
    faults: own.flatMap(({ faults }) => faults),
    measures: new Map(own.flatMap(({ measures }) => [...measures])),
    rules: own.flatMap(({ rules }) => rules),
    partitions: new Map([
      ...own.flatMap(({ partitions }, index) =>
        [...partitions].map(([name, each]): [string, Partition] => [`${index} ${name}`, each]),
      ),
      ['applies', { name: 'applies', of: applies, path: ['applies_when'] }],
    ]),
  };
}

/** A protocol whose measures have names that no other protocol has. */
function withOwnNames({ protocol }: Part, index: number): Protocol {
  const renamed = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(renamed);
    if (value instanceof Map)
      return new Map([...(value as Map<string, unknown>)].map(([key, each]) => [key, renamed(each)]));
    if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype)
      return value;
    const { kind, name } = value as { kind?: unknown; name?: unknown };
    if (kind === 'measure' && typeof name === 'string') return { kind, name: `${index} ${name}` };
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, renamed(each)]));
  };
  return {
    ...protocol,
    applies: renamed(protocol.applies) as Protocol['applies'],
    faults: renamed(protocol.faults) as Protocol['faults'],
    rules: renamed(protocol.rules) as Protocol['rules'],
    partitions: renamed(protocol.partitions) as Protocol['partitions'],
    measures: new Map(
      [...protocol.measures].map(([name, each]): [string, Measure] => [
        `${index} ${name}`,
        { ...(renamed(each) as Measure), name: `${index} ${name}` },
      ]),
    ),
  };
}
