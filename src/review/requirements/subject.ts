import type { Logic } from '../../logic/logic.ts';
import { protocolToLogic } from '../../logic/protocol-to-logic.ts';
import type {
  Condition,
  Contradiction,
  Ladder,
  Limit,
  Observation,
  Protocol,
} from '../../protocol/protocol.ts';
import type { Requirement } from '../../protocol/requirements/requirement.ts';
import { observationsOfCondition } from '../../protocol/walk.ts';
import type { Ward } from '../../ward/ward.ts';
import { withOpenLimits } from './open-limits.ts';

/** One protocol of what is asked, as logic that knows the conditions of the requirements too. */
export interface Part {
  readonly protocol: Protocol;
  readonly logic: Logic;
  /** Whether it has a say in the level, or only reads the conditions of a ward's requirements. */
  readonly reads: 'rules' | 'conditions';
}

/** What requirements are asked of: a protocol, or the protocols of a ward policy together. */
export interface Subject {
  readonly ladder: Ladder;
  readonly parts: readonly Part[];
  /** Limits that may be changed are among them. */
  readonly observations: ReadonlyMap<string, Observation>;
  readonly openLimits: ReadonlyMap<string, Limit>;
  readonly contradictions: readonly Contradiction[];
  /** Whether some number could grow past what is exact; then nothing may be asked. */
  readonly tooLarge: boolean;
}

/** Names of the partitions under which conditions stand in logic; no name of a file holds a blank. */
export const whereOf = ({ name, from }: Requirement): string => `where ${from ?? ''} ${name}`;
export const faultOf = (name: string): string => `fault ${name}`;

export const subjectOfProtocol = (protocol: Protocol, limits: Requirement['limits']): Subject =>
  subjectOf([protocol], protocol.requirements, limits);

export function subjectOfWard(ward: Ward, limits: Requirement['limits']): Subject {
  const members = ward.members.map(({ protocol }) => protocol);
  const observations = new Map(members.flatMap((each) => [...each.observations]));
  // A fault is one of the ward: each protocol is asked of it, also one that does not read what tells of it.
  const all = members.map((each): Protocol => {
    const told = each.faults.flatMap(({ when }) => observationsOfCondition(when));
    const more = told.flatMap((name): [string, Observation][] => {
      const entry = observations.get(name);
      return entry && !each.observations.has(name) ? [[name, { ...entry, role: 'scope' }]] : [];
    });
    return { ...each, observations: new Map([...each.observations, ...more]) };
  });
  const conditions: Protocol = { ...ward.own, observations, contradictions: [] };
  return subjectOf([...all, conditions], ward.requirements, limits);
}

function subjectOf(
  protocols: readonly Protocol[],
  requirements: readonly Requirement[],
  limits: Requirement['limits'],
): Subject {
  const last = protocols.length - 1;
  let tooLarge = false;
  const parts = protocols.map((each, index): Part => {
    const conditions = index === last ? requirements.flatMap(wherePartition) : [];
    const faults = each.faults.map(({ name, when }) => partition(faultOf(name), when));
    const partitions = new Map([...conditions, ...faults].map((one) => [one.name, one]));
    const whole = { ...each, partitions };
    const protocol = limits === 'as_written' ? whole : withOpenLimits(whole);
    const written = protocolToLogic(protocol);
    tooLarge ||= written.tooLarge.length > 0;
    return { protocol, logic: written.logic, reads: last > 0 && index === last ? 'conditions' : 'rules' };
  });
  const open = limits === 'as_written' ? [] : protocols.flatMap((each) => [...each.limits]);
  return {
    ladder: (protocols[0] as Protocol).ladder,
    parts,
    observations: new Map(parts.flatMap(({ protocol }) => [...protocol.observations])),
    openLimits: new Map(open.filter(([, { between }]) => between !== null)),
    contradictions: [...new Set(protocols.flatMap(({ contradictions }) => contradictions))],
    tooLarge,
  };
}

const partition = (name: string, of: Condition): { name: string; of: Condition[]; path: string[] } => ({
  name,
  of: [of],
  path: [name],
});

const wherePartition = (requirement: Requirement): ReturnType<typeof partition>[] =>
  requirement.where ? [partition(whereOf(requirement), requirement.where)] : [];
