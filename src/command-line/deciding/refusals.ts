import { commonHeaders, type SiteAnswer } from '../site-headers.ts';
import { refusals as savingRefusals } from '../saving/refusals.ts';

/**
 * Everything that a decision can be refused for beside what the record itself does not take: the status of HTTP, and the words that the
 * room shows. What is refused has entered nothing, and what was typed stays in the room.
 */
export const refusals = {
  ...savingRefusals,
  decides_nothing: [
    404,
    'Nothing can be decided here. Decide where the rooms are served from the folder of the policy.',
  ],
  only_post: [405, 'Here something can only be decided.'],
  another_page: [403, 'Only the rooms themselves can decide here, not another page.'],
  opened_before: [
    403,
    'The rooms were started again after this page was opened. Open them in a second tab, then come back to this one and decide again: what you typed is still here.',
  ],
  not_json: [415, 'What is decided must be sent as application/json, in UTF-8, and not compressed.'],
  too_large: [413, 'This is too large for a decision.'],
  too_slow: [408, 'What was decided did not arrive in time. Nothing was entered. Decide again.'],
  broken: [400, 'What was decided did not arrive whole: it is no JSON in UTF-8. Nothing was entered.'],
  other_keys: [400, 'This is no decision that can be entered here: its parts are not those of one.'],
  no_unicode: [400, 'A text holds half a character, which no file can hold. Take it out, then decide again.'],
  no_nul: [400, 'A text holds a NUL character, which no file can hold. Take it out, then decide again.'],
  no_protocol_yet: [404, 'There is no protocol or ward policy of this name.'],
  may_not_write: [
    403,
    'The folder of the record may not be written by you. Nothing was entered. Ask whoever looks after it.',
  ],
  no_room: [507, 'There is no room left on the disk. Nothing was entered. Make room, then decide again.'],
  failed: [500, 'It could not be entered. What stood there before still stands there. Decide again.'],
  no_such_edition: [404, 'There is no sealed edition of this number any more. Nothing was entered.'],
  other_edition: [
    409,
    'The edition on the disk is another file than the one that this page shows. Nothing was entered. Look at it as it is now.',
  ],
  other_draft: [
    409,
    'The draft on the disk is another text than the one that this page shows. Nothing was sealed. Look at it as it is now.',
  ],
  changed_since: [
    409,
    'Somebody else made an entry since this page looked. Nothing was entered. The record below is as it is now: look at it, then decide again. What you typed is still here.',
  ],
  signed_late: [409, 'The signature came too late, or for another moment. Nothing was entered. Sign again.'],
} as const satisfies Readonly<Record<string, readonly [status: number, says: string]>>;

export type Refusal = keyof typeof refusals;

export function refusalAnswer(why: Refusal): SiteAnswer {
  const [status, says] = refusals[why];
  const answer = jsonAnswer(status, { says });
  return status === 405 ? { ...answer, headers: { ...answer.headers, Allow: 'POST' } } : answer;
}

export const jsonAnswer = (status: number, body: object): SiteAnswer => ({
  status,
  headers: { ...commonHeaders, 'Content-Type': 'application/json; charset=utf-8' },
  body: JSON.stringify(body),
});
