import type { Level } from '../protocol/protocol.ts';
import type { Outcome } from '../shape/generated/types.ts';
import type { SheetLevel } from './sheet.ts';

type Response = Pick<
  SheetLevel,
  'says' | 'tell' | 'byWhen' | 'noAnswer' | 'doHeading' | 'doFirst' | 'nextSet' | 'stepDown'
>;

/** What a level asks for: whom to tell by when, then what to do until they come. */
export function responseInWords(level: Level, outcome: Outcome, isPlanned: boolean): Response {
  const { says, tell, respond, reassess, ifNoAnswer, stepDown } = level;
  const isIncomplete = outcome.level?.settled === false && outcome.missing.length > 0;
  const now = isIncomplete ? 'complete this one now; then ' : '';
  return {
    says,
    tell: tell.map(whoAndWhen),
    byWhen: respond === null ? null : `at the bedside within ${respond}`,
    noAnswer: ifNoAnswer ? `after ${ifNoAnswer.after} tell: ${ifNoAnswer.tell}` : null,
    doHeading: isPlanned ? 'As far as the plan allows' : tell.length > 0 ? 'Until they come' : 'Do',
    doFirst: outcome.advice.flatMap((each) => each.do),
    nextSet: reassess === null ? null : `${now}a full one within ${reassess}`,
    stepDown: stepDown ? stepDownInWords(stepDown) : null,
  };
}

function stepDownInWords({ setsInARow: sets, over, agreedBy }: NonNullable<Level['stepDown']>): string {
  const row = sets === 1 ? 'sets' : `${sets} sets in a row or more`;
  return `once ${row} have stayed below this level for at least ${over}; agreed by: ${agreedBy}`;
}

const whoAndWhen = ({ who, from, to }: Level['tell'][number]): string =>
  from === null || to === null ? who : `${who} (${from} to ${to})`;
