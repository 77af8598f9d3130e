import type { SiteApprovers, SiteRecord } from '../../../../src/index.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import type { FieldProblem } from './send.ts';
import type { Typing } from './use-decision.ts';

/** What every dialog that makes an entry is given. */
export interface DialogProps extends Typing {
  readonly protocol: SiteProtocol;
  readonly record: SiteRecord;
  readonly approvers: SiteApprovers;
  readonly onEntered: (says: string) => void;
  readonly onRefused: () => void;
  readonly onClose: () => void;
}

/** Those of the list, as choices: each with the roles that it stands there in. */
export const peopleOf = ({ people }: SiteApprovers): { readonly value: string; readonly says: string }[] =>
  people.map(({ name, roles }) => ({ value: name, says: `${name} (${roles.join(', ')})` }));

/** What is told when no edition was chosen. */
export const noEdition: FieldProblem = { field: 'edition', says: 'Still to be given: the edition.' };

/** What is sent along of an edition: its number and digest, as this page shows them. */
export function editionNamed(
  { editions = [] }: SiteProtocol,
  number: string,
): { readonly edition: number; readonly digest: string } | null {
  const found = editions.find(({ edition }) => String(edition) === number);
  return found ? { edition: found.edition, digest: found.digest } : null;
}
