import type { RoomProps } from '../../common/room.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { readDraft } from './drafts.ts';

/** The protocol that is written: one that is there, or one that so far only this browser has a draft of. */
export function writtenProtocol({ address, protocol, protocols }: RoomProps): SiteProtocol {
  const id = address.protocol;
  if (id === null || protocols.some((each) => each.id === id)) return protocol;
  const draft = readDraft(id);
  return draft ? notYetThere(id, draft.texts.protocol) : protocol;
}

/** A protocol of which no file is there yet. */
const notYetThere = (id: string, text: string): SiteProtocol => ({
  kind: 'protocol',
  id,
  title: titleIn(text) ?? id,
  file: `${id}/protocol.yaml`,
  text: '',
  ladder: null,
  cases: null,
});

/** What a text says behind `title:`, without the quotation marks. */
export const titleIn = (text: string): string | null =>
  /^title:[ \t]*(["']?)(.+?)\1[ \t]*\r?$/m.exec(text)?.[2] ?? null;
