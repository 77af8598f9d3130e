import { emptyBackground, handoffText } from '../bedside/handoff.ts';
import { protocolReader } from '../bedside/reader.ts';
import type { Compiled } from '../outcome/compile.ts';
import { visible } from '../problems/visible.ts';
import type { Series } from '../series/series.ts';

/** The handoff of a set or a series: the text that the Bedside room copies and prints, every blank still to be filled in. */
export function handoffFor(compiled: Compiled, series: Series): string {
  const texts = protocolReader(compiled)
    .read(series)
    .map(({ sheet, facts }) => handoffText(sheet, facts, emptyBackground));
  return texts.join('\n').split('\n').map(visible).join('\n');
}
