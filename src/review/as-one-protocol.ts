import type { Protocol } from '../protocol/protocol.ts';

/** What several protocols read, as if it were one: for sets that all of them are asked about. */
export function asOneProtocol(protocols: readonly Protocol[]): Protocol {
  const [first] = protocols as [Protocol];
  return {
    ...first,
    observations: new Map(protocols.flatMap(({ observations }) => [...observations])),
    contradictions: [...new Set(protocols.flatMap(({ contradictions }) => contradictions))],
  };
}
