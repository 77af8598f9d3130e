import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import type { LooseEnd } from './loose-here.ts';
import type { Looking } from './use-loose.ts';

interface Props {
  readonly heading: string;
  readonly about: string;
  readonly looking: Looking;
}

/** One search: what it looks for, its button, and how far it is. */
export function SearchBar({ heading, about, looking }: Props): ReactNode {
  const { state, looked, problems, start, cancel } = looking;
  return (
    <section className="search-bar" aria-label={heading}>
      <h3>{heading}</h3>
      <p className="hint">{about}</p>
      <div>
        {state === 'running' ? (
          <button type="button" className="button" onClick={cancel}>
            {`Cancel: ${heading.toLowerCase()}`}
          </button>
        ) : (
          <button type="button" className="button" onClick={start}>
            {`${state === 'not_asked' ? 'Look for' : 'Look again for'} ${heading.toLowerCase()}`}
          </button>
        )}
      </div>
      {state === 'running' && looked && (
        <progress aria-label={`${heading}: looked at`} value={looked.looked} max={looked.of} />
      )}
      <p role="status">{inWords(looking)}</p>
      {keyed(problems).map(({ key, line }) => (
        <p key={key} className="not-whole">
          {line}
        </p>
      ))}
    </section>
  );
}

function inWords({ state, ends, problems, looked }: Looking): string {
  if (state === 'not_asked') return '';
  if (state === 'failed') return 'The kit itself failed: nothing is known.';
  const far = looked ? `${looked.looked} of ${looked.of} looked at; ` : '';
  if (state === 'running') return looked ? `${far}${counts(ends)}, so far.` : 'Looking…';
  if (state === 'cancelled') return `Cancelled: ${far}${counts(ends)}. The rest is not known.`;
  return problems.length > 0 && ends.length === 0 ? '' : `${far}${counts(ends)}.`;
}

/** As the command line counts them. */
function counts(ends: readonly LooseEnd[]): string {
  const open = ends.filter(({ isOpen }) => isOpen).length;
  const accepted = ends.filter((each) => each.accepted !== null).length;
  const unsettled = ends.filter(({ kind }) => kind === 'open').length;
  const told = ends.length - open - accepted - unsettled;
  const more = told + unsettled > 0 ? `, ${told} told, ${unsettled} not settled` : '';
  return `${open} to be answered, ${accepted} accepted${more}`;
}
