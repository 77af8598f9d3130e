import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Outcome } from '../shape/generated/types.ts';
import type { Said } from './sheet.ts';
import { titleOf } from './words.ts';

/** What is refused or questioned, by observation. Where one sentence concerns several, each of them has it whole. */
export function sheetRemarks(remarks: Outcome['refused'], protocol: Protocol): Said[] {
  return remarks.map(({ observation, because }) => {
    const same = remarks.filter((each) => each.because === because);
    const titles = same.map((each) => titleOf(each.observation, protocol));
    const given = listed(same.map((each, index) => `${titles[index] ?? ''} (${each.given})`));
    const namesOne = titles.some((title) => because.startsWith(`${title} `));
    return {
      observation,
      title: titleOf(observation, protocol),
      says: namesOne ? because : `${given}: ${because}`,
    };
  });
}
