import type { SealApart } from '../../src/command-line/deciding/seal-apart.ts';
import { headOf } from '../../src/editions/record.ts';
import { loadRecord } from '../../src/command-line/record-files.ts';
import { loadEdition, editionPath } from '../../src/command-line/edition-files.ts';
import { openSite, type Heard, type SaveSite, type Sent } from './save-site.ts';
import type { Place } from './policy.ts';
import { sealHere } from './seal-here.ts';
import { terminalAt } from './terminal-at.ts';

/** The rooms over the folder of an invented ward, at a moment that a test says. */
export interface DecidingSite {
  readonly site: SaveSite;
  /** The time that the server has. */
  setNow(now: string): void;
  /** Decides as a page of the rooms would, on the record as it stands, but for what is said otherwise. */
  decide(asked: Readonly<Record<string, unknown>>): Promise<Heard>;
  send(url: string, body: object, more?: Sent): Promise<Heard>;
}

export async function openDeciding(made: Place, start: string, seal?: SealApart): Promise<DecidingSite> {
  let now = start;
  const clock = {
    ...terminalAt(start, made.seen),
    get today() {
      return now.slice(0, 10);
    },
    get now() {
      return now;
    },
  };
  const site = await openSite({ saves: made.protocols, decides: clock, seal: seal ?? sealHere(clock) });
  const send = async (url: string, body: object, more: Sent = {}): Promise<Heard> =>
    site.send({ url, body: JSON.stringify(body), ...more });
  return {
    site,
    setNow: (time) => {
      now = time;
    },
    send,
    decide: async (asked) => send('/decide', { ...(await usual(made, asked['what'])), ...asked }),
  };
}

/** What a page sends of what it knows: the record as it stands, and edition 1 as it is sealed. */
async function usual({ ward }: Place, what: unknown): Promise<object> {
  const { record } = await loadRecord(ward);
  const head = record && headOf(record);
  const common = { id: 'small_ward', head, at: null, jws: null };
  if (what === 'withdraw') return { ...common, by: 'Dr Ash', because: 'Wrong.', instead: 'Paper.', from: '' };
  const { edition } = await loadEdition(editionPath(ward, 1));
  const named = { ...common, edition: 1, digest: edition?.file.digest };
  return what === 'approve'
    ? { ...named, by: 'Dr Ash', role: 'Doctor', minute: 'Minute 2', on: '2026-03-02' }
    : { ...named, by: 'Dr Ash', because: 'Agreed by the council.', from: '' };
}
