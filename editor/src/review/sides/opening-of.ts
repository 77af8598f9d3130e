import { fetchEdition } from '../../common/fetch-edition.ts';
import { withSealedMembers } from '../../common/sealed-members.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import type { Opening, SideAsked } from '../messages.ts';
import type { ChosenSides } from './side-choices.ts';

/** The question that opens both sides, with the texts of the sealed editions that they are. */
export async function openingOf(
  protocol: SiteProtocol,
  all: readonly SiteProtocol[],
  { before, after }: ChosenSides,
): Promise<Opening> {
  const [members, first, second] = await Promise.all([
    withSealedMembers(protocol, all),
    before === null ? null : sideAsked(protocol, before),
    sideAsked(protocol, after),
  ]);
  return { kind: 'open', protocol, all: members, before: first, after: second };
}

async function sideAsked({ editions = [] }: SiteProtocol, name: string): Promise<SideAsked> {
  const found = editions.find(({ edition }) => String(edition) === name);
  if (!found) return { kind: 'draft' };
  const text = await fetchEdition(found.address);
  return { kind: 'edition', edition: found.edition, text: { file: found.file, text } };
}
