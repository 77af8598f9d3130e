import type { ReactNode } from 'react';
import type { StoredLine, StoredPart } from '../../../../src/index.ts';
import { keyed } from '../../common/keyed.ts';
import type { RoomProps } from '../../common/room.ts';
import { useStored, type StoredHere } from './use-stored.ts';
import { shortDigest } from './words.ts';
import './decide.css';
import './stored.css';

/** In a site of files: what was worked out about the draft when the site was made, with the digest of the texts that it is of. */
export function Stored(props: Pick<RoomProps, 'protocol' | 'site'>): ReactNode {
  const here = useStored(props);
  if (here.kind === 'none') return null;
  return (
    <section className="panel stored" aria-labelledby="stored-title">
      <h2 id="stored-title">What was worked out when these rooms were made</h2>
      <Inside here={here} />
    </section>
  );
}

function Inside({ here }: { readonly here: Exclude<StoredHere, { kind: 'none' }> }): ReactNode {
  switch (here.kind) {
    case 'loading':
      return <p className="hint">Comparing the stored results with the texts beside them…</p>;
    case 'failed':
      return (
        <p className="decide-warn" role="alert">
          What was stored cannot be read, or is not whole: nothing of it is shown. The other parts of this
          room work everything out anew.
        </p>
      );
    case 'otherwise':
      return (
        <div className="decide-warn" role="alert">
          <p>
            {`These results are of other texts than those beside them (they are of ${shortDigest(here.draft.digest)}): nothing of them is shown. The other parts of this room work everything out anew.`}
          </p>
          <p>{`Changed since, or gone: ${here.files.join(', ')}`}</p>
        </div>
      );
    case 'true':
      return (
        <>
          <p className="hint">
            {`Of these very texts, ${shortDigest(here.draft.digest)}: each was compared just now. Worked out at ${here.made} by version ${here.kit}.`}
          </p>
          {here.draft.parts.map((part) => (
            <Part key={part.title} part={part} />
          ))}
        </>
      );
  }
}

function Part({ part: { title, says, lines } }: { readonly part: StoredPart }): ReactNode {
  return (
    <section className="stored-part">
      <h3>{title}</h3>
      <p>{says}</p>
      {lines.length > 0 && (
        <details>
          <summary>{`Show ${lines.length === 1 ? 'it' : `all ${lines.length}`}`}</summary>
          <ul className="stored-lines">
            {lines.map((line, index) => (
              <li key={`${index} ${line.says}`}>
                <Line line={line} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function Line({ line: { says, line, more } }: { readonly line: StoredLine }): ReactNode {
  return (
    <>
      <p>
        {says}
        {line !== null && <span className="stored-line">{`line ${line}`}</span>}
      </p>
      {more.length > 0 && (
        <ul className="plain">
          {keyed(more).map((each) => (
            <li key={each.key}>{each.line}</li>
          ))}
        </ul>
      )}
    </>
  );
}
