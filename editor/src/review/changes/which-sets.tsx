import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { sentence } from '../../common/sentence.ts';
import type { LevelChange } from './changes-here.ts';

/** Which sets a change is about: what all of them share, then each part by itself, and how much ground they cover. */
export function WhichSets({ sets, ground }: Pick<LevelChange, 'sets' | 'ground'>): ReactNode {
  const { shared, isAll, parts, notes } = sets;
  return (
    <div className="which-sets">
      <h4>Which sets</h4>
      <p>{intro(sets)}</p>
      {shared.length > 0 && <Terms terms={shared} />}
      {parts.length > 0 && (
        <>
          {shared.length > 0 && <p>{isAll ? 'and one of these:' : 'and one of these parts:'}</p>}
          <ol className="set-parts">
            {parts.map((terms) => (
              <li key={terms.join()}>{terms.length === 0 ? 'every one of them' : <Terms terms={terms} />}</li>
            ))}
          </ol>
        </>
      )}
      {keyed(notes).map(({ key, line }) => (
        <p key={key}>{`${sentence(line)}.`}</p>
      ))}
      <p className="hint">{`${sentence(ground)}.`}</p>
    </div>
  );
}

function intro({ shared, isAll, parts }: LevelChange['sets']): string {
  if (shared.length > 0)
    return isAll ? 'All of this, whatever the rest:' : 'In every part that is told here, whatever the rest:';
  if (parts.length === 0) return 'Every set.';
  return parts.length === 1 ? 'All of this, whatever the rest:' : 'All of one part, whatever the rest:';
}

function Terms({ terms }: { readonly terms: readonly string[] }): ReactNode {
  return (
    <ul className="terms">
      {terms.map((term) => (
        <li key={term}>{term}</li>
      ))}
    </ul>
  );
}
