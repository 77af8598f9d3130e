import type { Outcome } from '../shape/generated/types.ts';
import type { Level } from '../protocol/protocol.ts';
import type { Page } from './page.ts';

/** What a level asks for, in the order in which it is done: whom to tell by when, then what to do until they come. */
export function showResponse(level: Level, outcome: Outcome, page: Page, isPlanned: boolean): void {
  const { says, tell, respond, reassess, ifNoAnswer, stepDown } = level;
  page.gap();
  if (says !== null) page.text(says);
  page.gap();
  if (tell.length > 0) page.labelled('Tell', tell.map(whoAndWhen));
  if (respond !== null) page.labelled('By when', [`at the bedside within ${respond}`]);
  if (ifNoAnswer) page.labelled('No answer', [`after ${ifNoAnswer.after} tell: ${ifNoAnswer.tell}`]);
  const heading = isPlanned ? 'As far as the plan allows' : tell.length > 0 ? 'Until they come' : 'Do';
  whatToDo(outcome, heading, page);
  const isIncomplete = outcome.level?.settled === false && outcome.missing.length > 0;
  const now = isIncomplete ? 'complete this one now; then ' : '';
  if (reassess !== null) page.labelled('Next set', [`${now}a full one within ${reassess}`]);
  if (stepDown) page.labelled('Step down', [stepDownWords(stepDown)]);
}

/** What the rules ask to be done, those of the highest level first. */
function whatToDo({ advice }: Outcome, heading: string, page: Page): void {
  const actions = advice.flatMap((each) => each.do);
  if (actions.length === 0) return;
  page.gap();
  page.title(heading);
  for (const action of actions) page.item(action);
  page.gap();
}

function stepDownWords({ setsInARow: sets, over, agreedBy }: NonNullable<Level['stepDown']>): string {
  const row = sets === 1 ? 'sets' : `${sets} sets in a row or more`;
  return `once ${row} have stayed below this level for at least ${over}; agreed by: ${agreedBy}`;
}

const whoAndWhen = ({ who, from, to }: Level['tell'][number]): string =>
  from === null || to === null ? who : `${who} (${from} to ${to})`;
