import type { Level, Protocol } from '../protocol/protocol.ts';
import type { Outcome, OutcomeInForce } from '../shape/generated/types.ts';
import { mayRaise } from './gap-lines.ts';
import { inForceInWords } from './in-force-in-words.ts';
import { reasonsFor, settledBy, toGet, unsure } from './level-reasons.ts';
import { responseInWords } from './response-in-words.ts';
import type { SheetLevel } from './sheet.ts';
import { levelTitle, rankOf } from './words.ts';

/** How a level is answered where it is read: on a ward in other words than the ladder's, and with a plan that limits what is done. */
export interface Here {
  readonly level: Level | null;
  readonly isPlanned: boolean;
  /** Whether this is one of several readings of a set. */
  readonly isAlone: boolean;
}

export const asOnTheLadder: Here = { level: null, isPlanned: false, isAlone: true };

const oneOfSeveral =
  'This is one reading alone. Where another reading of this set, or your own worry, calls for more, act on that.';

const none = {
  couldBe: null,
  worried: null,
  notes: [],
  reasons: [],
  toGet: [],
  says: null,
  tell: [],
  byWhen: null,
  noAnswer: null,
  doHeading: '',
  doFirst: [],
  nextSet: null,
  stepDown: null,
  settledBy: null,
  mayRaise: [],
  alone: null,
  inForce: [],
  latest: null,
} as const;

type Reached = NonNullable<Outcome['level']>;

/**
 * The level; what to take at once where it is not settled; whom to tell by when, and what to do until they come. What is not settled
 * never reads as settled.
 */
export function sheetLevel(outcome: Outcome, protocol: Protocol, here: Here = asOnTheLadder): SheetLevel {
  const { level, in_force: held } = outcome;
  if (!level) return notForThisPatient(outcome, protocol);
  if (held) return stillInForce({ ...outcome, level }, held, protocol, here);
  const found = byItself(outcome, level, protocol);
  return found.reached === null ? found : { ...found, ...response(outcome, found.reached, protocol, here) };
}

const ladderOf = ({ ladder }: Protocol): string[] => ladder.levels.map(({ title }) => title);

function notForThisPatient({ applies_because: because, otherwise }: Outcome, protocol: Protocol): SheetLevel {
  return {
    ...none,
    kind: 'not_for_patient',
    heading: 'No result: not for this patient',
    reached: null,
    could: null,
    ladder: ladderOf(protocol),
    worried: 'Call now, whatever this protocol is for.',
    reasons: because ?? [],
    notes: [
      'This protocol gives no level here, and its silence reassures nobody.',
      ...(otherwise === undefined ? [] : [otherwise]),
    ],
  };
}

function noResultYet(outcome: Outcome, { could_be: most }: Reached, protocol: Protocol): SheetLevel {
  const could = rankOf(most, protocol);
  return {
    ...none,
    kind: 'not_settled',
    heading: 'No result yet: complete the set',
    reached: null,
    could,
    ladder: ladderOf(protocol),
    couldBe: could > 0 ? `It could be as high as ${levelTitle(most, protocol)}` : null,
    worried: 'Call now. Do not wait for the set.',
    notes: [
      'Stay with the patient and complete the set now. Where you cannot, or the patient looks unwell, tell whoever is in charge.',
      ...unsure(outcome.applies),
    ],
    toGet: toGet(outcome, protocol),
  };
}

/** What a set calls for by itself, without how it is answered. */
const byItself = (outcome: Outcome, level: Reached, protocol: Protocol): SheetLevel =>
  level.at_least === null ? noResultYet(outcome, level, protocol) : ofItself(outcome, level, protocol);

/** A level that is called for. */
function ofItself(outcome: Outcome, level: Reached, protocol: Protocol): SheetLevel {
  const { at_least: now, could_be: most, settled } = level;
  const [reached, could] = [rankOf(now, protocol), rankOf(most, protocol)];
  const title = ladderOf(protocol)[reached] ?? '';
  const raising = mayRaise(outcome, reached, protocol);
  return {
    ...none,
    kind: settled ? 'settled' : 'at_least',
    heading: settled ? title : `Act now on: ${title}`,
    reached,
    could,
    ladder: ladderOf(protocol),
    couldBe: settled ? null : couldBe(could > reached, levelTitle(most, protocol)),
    toGet: settled ? [] : toGet(outcome, protocol),
    reasons: settled ? [] : reasonsFor(outcome, could > reached, protocol),
    settledBy: settled ? settledBy(outcome, raising.length > 0) : null,
    mayRaise: raising,
  };
}

const couldBe = (isHigher: boolean, most: string): string =>
  isHigher ? `It could be as high as ${most}` : 'What this reading needs takes it no higher';

/** A level of earlier sets holds until its role agrees to step down: it is what to act on, whatever the latest set calls for. */
function stillInForce(
  outcome: Outcome & { readonly level: Reached },
  found: OutcomeInForce,
  protocol: Protocol,
  here: Here,
): SheetLevel {
  const latest = byItself(outcome, outcome.level, protocol);
  const reached = rankOf(found.level, protocol);
  const heading = latest.reached === null ? latest.heading : (latest.ladder[latest.reached] ?? '');
  return {
    ...none,
    kind: 'at_least',
    heading: `Still in force: ${levelTitle(found.level, protocol)}`,
    reached,
    could: Math.max(reached, latest.could ?? 0),
    ladder: ladderOf(protocol),
    couldBe: `The latest set by itself: ${heading}`,
    inForce: inForceInWords(found),
    ...response(outcome, reached, protocol, here),
    latest,
  };
}

function response(outcome: Outcome, reached: number, { ladder }: Protocol, here: Here): Partial<SheetLevel> {
  const rung = here.level ?? ladder.levels[reached];
  return {
    ...(rung ? responseInWords(rung, outcome, here.isPlanned) : {}),
    alone: here.isAlone ? oneOfSeveral : null,
  };
}
