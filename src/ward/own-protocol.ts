import type * as File from '../shape/generated/types.ts';
import type { Ladder, ObservationEntry, Protocol } from '../protocol/protocol.ts';

/** The standing fact that a ward's plans are about. */
export const planName = 'escalation_plan';

/** What the ward itself reads of a series, as a protocol without rules. */
export function ownProtocol(
  file: File.WardFile,
  ladder: Ladder,
  vocabulary: ReadonlyMap<string, ObservationEntry>,
): Protocol {
  const plan = vocabulary.get(planName);
  return {
    name: file.ward,
    edition: file.edition,
    title: file.title,
    about: file.about ?? null,
    otherwise: null,
    basedOn: [],
    reviewBy: file.review_by ?? null,
    owners: file.owners ?? [],
    sources: new Map(),
    ladder,
    applies: null,
    observations: new Map(plan ? [[planName, { ...plan, role: 'helps' as const }]] : []),
    vocabulary,
    contradictions: [],
    limits: new Map(),
    faults: [],
    measures: new Map(),
    rules: [],
    rulesInOrder: [],
    partitions: new Map(),
    ordinary: null,
    mustSay: new Map(),
    hazards: new Map(),
    requirements: [],
    digest: '',
    logicDigest: '',
  };
}
