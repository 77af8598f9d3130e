import type * as File from '../shape/generated/types.ts';
import type { Report } from '../problems/problem.ts';
import type { Ladder, Protocol } from '../protocol/protocol.ts';
import { checkWheres } from '../protocol/requirements/check-wheres.ts';
import { requirementsOfLadder, withThoseOfLadder } from '../protocol/requirements/requirements-of-ladder.ts';
import { readRequirements, type Requirements } from '../protocol/requirements/read-requirements.ts';
import { namesOfWard } from './names-of-ward.ts';
import { ownProtocol } from './own-protocol.ts';

/** What a ward policy states that must always hold. It can name every observation that one of its protocols reads. */
export function readWardRequirements(
  file: File.WardFile,
  ladder: Ladder,
  members: readonly Protocol[],
  report: Report,
): Requirements {
  const observations = new Map(members.flatMap((each) => [...each.observations]));
  const sources = new Set(Object.keys(file.sources ?? {}));
  // A name of the dictionary that no protocol reads is told from one that is nothing at all.
  const declared = new Map(members.flatMap(({ vocabulary }) => [...vocabulary]));
  const names = namesOfWard(declared, observations, ladder, sources);
  const read = readRequirements(file, { names, report });
  const protocol: Protocol = { ...ownProtocol(file, ladder, declared), observations, ...read };
  checkWheres({ protocol, file: { observations: {}, rules: [], ...noProtocol }, today: null }, report);
  const faults = members.flatMap((each) => each.faults);
  return withThoseOfLadder(read, requirementsOfLadder(ladder, observations, faults));
}

/** The checks of conditions look at no file. */
const noProtocol = { protocol: '', edition: 1, title: '', ladder: '' };
