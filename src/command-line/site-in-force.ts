import { banners, inForceSince } from '../editions/said-of-policy.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { textToTime } from '../series/text-to-time.ts';
import { readInForce } from './in-force.ts';
import type { Terminal } from './terminal.ts';

/** What is in force for a ward: a sealed edition, with what must be said of it; or nothing, and what applies instead. */
export type SiteInForce =
  | {
      readonly kind: 'policy';
      readonly file: string;
      readonly text: string;
      readonly says: string;
      readonly warnings: readonly string[];
    }
  | { readonly kind: 'none'; readonly says: readonly string[] };

/** What a room for patients reads with in place of the draft of a ward policy: what its record says is in force now.
 * Where the rooms are files and not served, that is said too. */
export async function siteInForce(
  folder: string,
  id: string,
  terminal: Terminal,
  isLive: boolean,
): Promise<SiteInForce> {
  const { now } = terminal;
  const at = textToTime(now);
  const moment = { at: typeof at === 'number' ? at : 0, day: now.slice(0, 10) };
  const notLive = isLive ? [] : [madeAt(now)];
  const { reading } = await readInForce(folder, moment, terminal);
  if (reading.kind === 'none') {
    const why = [
      'No policy in force: use the paper policy.',
      ...(reading.because === null ? [] : [`It was withdrawn: ${reading.because}`]),
      ...(reading.instead === null ? [] : [`Instead: ${reading.instead}`]),
      ...notLive,
    ];
    return { kind: 'none', says: why };
  }
  const { file, text, said } = reading;
  return {
    kind: 'policy',
    file: `${id}/editions/${file.edition}.yaml`,
    text,
    says: inForceSince(file.edition, said),
    warnings: [...banners(said), ...notLive],
  };
}

/** Files do not change by themselves: what they hold may be long out of force. */
const madeAt = (now: string): string =>
  `These rooms are files that were made at ${timeInWords(now)}. They cannot know what was put in force or withdrawn since then: ask whoever keeps the policy.`;
