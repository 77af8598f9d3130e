import type { ReactNode } from 'react';
import type { SiteEdition, SiteRecord } from '../../../../src/index.ts';
import { keyed } from '../../common/keyed.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { draftEdition, shortDigest } from './words.ts';

interface Props {
  readonly protocol: SiteProtocol;
  readonly record: SiteRecord | null;
}

/** The sealed editions, the latest first, each with how far it has come; above them the draft that may become the next. */
export function EditionsTable({ protocol, record }: Props): ReactNode {
  const { editions = [] } = protocol;
  return (
    <ol className="decide-editions">
      <li className="decide-draft">
        <p className="decide-edition-name">{`Draft of edition ${draftEdition(protocol) ?? '…'}`}</p>
        <p>{draftSays(protocol)}</p>
      </li>
      {editions.toReversed().map((edition) => (
        <li key={edition.edition}>
          <Sealed edition={edition} record={record} />
        </li>
      ))}
    </ol>
  );
}

function draftSays(protocol: SiteProtocol): string {
  const number = draftEdition(protocol);
  const isTaken = protocol.editions?.some(({ edition }) => edition === number) ?? false;
  if (number === null) return 'Its text says no edition.';
  return isTaken
    ? `Edition ${number} is sealed already. When something in the draft has changed, give it a higher number in the Write room: edition: ${number + 1}`
    : 'What stands on the disk, not sealed yet.';
}

function Sealed({
  edition,
  record,
}: {
  readonly edition: SiteEdition;
  readonly record: SiteRecord | null;
}): ReactNode {
  const stand = record?.editions.find((each) => each.edition === edition.edition);
  const isInForce = record?.in_force?.edition === edition.edition;
  return (
    <>
      <p className="decide-edition-name">
        {`Edition ${edition.edition}`}
        {isInForce && <span className="decide-mark">in force</span>}
      </p>
      <p className="hint">
        {[
          edition.sealed_on === '' ? null : `sealed ${edition.sealed_on}`,
          edition.authors.length === 0 ? null : `written by ${edition.authors.join(', ')}`,
          shortDigest(edition.digest),
        ]
          .filter((part) => part !== null && part !== '')
          .join(' · ')}
      </p>
      {stand && (
        <>
          {keyed(
            stand.approved.map(
              ({ by, role, minute, on }) => `Approved by ${by} (${role}): ${minute}, of ${on}.`,
            ),
          ).map(({ key, line }) => (
            <p key={key}>{line}</p>
          ))}
          <p className={stand.is_approved ? undefined : 'decide-open'}>{stand.says}</p>
        </>
      )}
    </>
  );
}
