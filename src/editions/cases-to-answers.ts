import { documentToCases, readStory } from '../cases/document-to-cases.ts';
import type { Document } from '../document/document.ts';
import type { Compiled } from '../outcome/compile.ts';
import { seriesToOutcome } from '../outcome/series-to-outcome.ts';
import { reporter } from '../problems/problem.ts';
import { checkShape } from '../shape/check-shape.ts';
import type { SealedAnswer } from '../shape/generated/types.ts';
import { wardOutcomeOf } from '../ward/series-to-ward-outcome.ts';
import type { Ward } from '../ward/ward.ts';
import { answersOfOutcome, answersOfWard } from './answers.ts';

/** What is read with: a protocol, or a ward policy. */
export type Asked = Compiled | Ward;

export const isWard = (asked: Asked): asked is Ward => 'members' in asked;

/** What is answered to each case that can be read, in the order of the file. */
export function casesToAnswers(cases: Document, asked: Asked): SealedAnswer[] {
  if (isWard(asked)) return answersToWardCases(cases, asked);
  return documentToCases(cases, asked.protocol).cases.map(({ name, series }) => ({
    case: name,
    answers: answersOfOutcome(seriesToOutcome(asked, series)),
  }));
}

function answersToWardCases(cases: Document, ward: Ward): SealedAnswer[] {
  const { value: file } = checkShape('ward_cases', cases);
  return (file?.cases ?? []).flatMap((each, index): SealedAnswer[] => {
    const { series } = readStory(each, ['cases', index], cases, ward.vocabulary, reporter([]));
    return series ? [{ case: each.case, answers: answersOfWard(wardOutcomeOf(ward, series)) }] : [];
  });
}
