import { emptyBackground, handoffText, type SaidOfSource } from '../bedside/handoff.ts';
import { protocolReader, wardReader } from '../bedside/reader.ts';
import type { Compiled } from '../outcome/compile.ts';
import { visible } from '../problems/visible.ts';
import type { Series } from '../series/series.ts';
import type { Ward } from '../ward/ward.ts';

export { draftSaid } from '../bedside/handoff.ts';

/** The handoff of a set or a series: the text that the Bedside room copies and prints, every blank still to be filled in. */
export function handoffFor(asked: Compiled | Ward, series: Series, said?: SaidOfSource): string {
  const reader = 'members' in asked ? wardReader(asked) : protocolReader(asked);
  const texts = reader
    .read(series)
    .map(({ sheet, facts }) => handoffText(sheet, facts, emptyBackground, said));
  return texts.join('\n').split('\n').map(visible).join('\n');
}
