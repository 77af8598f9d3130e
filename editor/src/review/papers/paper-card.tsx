import type { ReactNode } from 'react';
import type { Paper } from './use-paper.ts';

interface Props {
  readonly title: string;
  readonly about: string;
  /** The name of the file, when it is kept. */
  readonly file: string;
  readonly paper: Paper;
}

const said = {
  not_asked: '',
  making: 'Being made…',
  made: 'Made. It needs nothing beside itself.',
  cancelled: 'Cancelled: nothing was made.',
  failed: 'The kit itself failed: nothing was made.',
} as const;

/** One paper: what it is, and, once it is made, the ways to read, print and keep it. */
export function PaperCard({ title, about, file, paper }: Props): ReactNode {
  const { state, address, make, cancel } = paper;
  return (
    <section className="panel paper-card" aria-label={title}>
      <h2>{title}</h2>
      <p>{about}</p>
      <div className="paper-ways">
        {state === 'making' ? (
          <button type="button" className="button" onClick={cancel}>
            {`Cancel: ${title.toLowerCase()}`}
          </button>
        ) : (
          <button type="button" className="button button-strong" onClick={make}>
            {`${state === 'made' ? 'Make again:' : 'Make'} ${title.toLowerCase()}`}
          </button>
        )}
        {address !== null && (
          <>
            <a className="button paper-link" href={address} target="_blank" rel="noreferrer">
              Open, to read or print
            </a>
            <a className="button paper-link" href={address} download={file}>
              Keep as a file
            </a>
          </>
        )}
      </div>
      <p role="status">{said[state]}</p>
    </section>
  );
}
