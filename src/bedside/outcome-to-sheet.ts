import { timeInWords } from '../outcome/time-in-words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Outcome, WardOutcome } from '../shape/generated/types.ts';
import { answerHere, outcomesAsOne, protocolsAsOne } from '../ward/as-one.ts';
import type { Ward } from '../ward/ward.ts';
import { sheetFacts } from './sheet-facts.ts';
import { sheetFaults } from './sheet-faults.ts';
import { sheetGaps } from './sheet-gaps.ts';
import { asOnTheLadder, sheetLevel, type Here } from './sheet-level.ts';
import { sheetMeasures } from './sheet-measures.ts';
import { sheetRemarks } from './sheet-remarks.ts';
import { sheetWhy } from './sheet-why.ts';
import type { Sheet } from './sheet.ts';
import { levelTitle } from './words.ts';

/** An outcome of one protocol in words. `outcomeToSheet(outcome, protocol).level.heading` is the level in words. */
export const outcomeToSheet = (outcome: Outcome, protocol: Protocol): Sheet =>
  sheetOf(outcome, protocol, asOnTheLadder, new Map());

/** The outcome of a ward policy in words, in the order of an outcome of one protocol: one level, and one answer to it. */
export function wardOutcomeToSheet(whole: WardOutcome, ward: Ward): Sheet {
  const { plan, reads } = whole;
  const here = { level: answerHere(whole, ward), isPlanned: plan !== undefined, isAlone: false };
  const titles = new Map(reads.map(({ protocol, title }) => [protocol, title]));
  const members = reads.flatMap((outcome, index) => {
    const own = ward.members[index]?.protocol;
    return own ? [{ outcome, own }] : [];
  });
  return {
    ...sheetOf(outcomesAsOne(whole), protocolsAsOne(ward), here, titles),
    plan: plan
      ? {
          title: `Plan: ${plan.title}`,
          says: `${plan.says} It changes whom to tell and how soon, not the level.`,
        }
      : null,
    reads: members.map(({ outcome, own }) => readInWords(outcome, own)),
    measures: members.flatMap(({ outcome, own }) => sheetMeasures(outcome, own, outcome.title)),
  };
}

function sheetOf(
  outcome: Outcome,
  protocol: Protocol,
  here: Here,
  protocols: ReadonlyMap<string, string>,
): Sheet {
  return {
    title: outcome.title,
    edition: `${outcome.protocol}, edition ${outcome.edition}, ${outcome.digest.slice(0, 'sha256:'.length + 12)}`,
    at: outcome.at === null ? null : timeInWords(outcome.at),
    refused: sheetRemarks(outcome.refused, protocol),
    questioned: sheetRemarks(outcome.questioned, protocol),
    plan: null,
    level: sheetLevel(outcome, protocol, here),
    reads: [],
    faults: sheetFaults(outcome, protocol),
    gaps: sheetGaps(outcome, protocol),
    why: sheetWhy(outcome, protocol, protocols),
    notReassuring: outcome.rules.flatMap(({ title, not_reliable: because }) =>
      because === undefined ? [] : [`${title}: ${because.join('; ')}`],
    ),
    takenBack: outcome.rules.flatMap(({ title, taken_back_by: by }) =>
      by === undefined ? [] : [`${title}: ${by}`],
    ),
    measures: sheetMeasures(outcome, protocol, null),
    facts: sheetFacts(outcome, protocol),
    caution: outcome.caution,
  };
}

/** What one protocol of a ward calls for; of one that is not for the patient, why, and what is. */
function readInWords(
  { title, level, applies, applies_because: because = [], otherwise }: Outcome,
  protocol: Protocol,
): Sheet['reads'][number] {
  if (applies === 'no' || !level)
    return { says: `${title}: not for this patient (${because.join('; ')})`, otherwise: otherwise ?? null };
  return { says: `${title}: ${levelInWords(level, protocol)}`, otherwise: null };
}

function levelInWords(
  { at_least: atLeast, could_be: couldBe, settled }: NonNullable<Outcome['level']>,
  protocol: Protocol,
): string {
  const most = levelTitle(couldBe, protocol);
  if (atLeast === null) return `no result yet, it could be as high as ${most}`;
  const now = levelTitle(atLeast, protocol);
  if (settled) return now;
  return atLeast === couldBe ? `${now}, not settled` : `${now}, it could be as high as ${most}`;
}
