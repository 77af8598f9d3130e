import type { ReactNode } from 'react';
import type { SheetLevel } from '../../../src/index.ts';
import { keyed } from './keyed.ts';
import { sentence } from './sentence.ts';
import { Ladder, shadeOf } from './ladder.tsx';

/** The level and what to do, whom to tell and by when. What is not settled never looks settled. */
export function LevelCard({
  level,
  id = 'outcome',
}: {
  readonly level: SheetLevel;
  /** Of the heading, so that a page can lead there. */
  readonly id?: string;
}): ReactNode {
  const { kind, reached, ladder } = level;
  const shade = reached === null ? 'none' : shadeOf(reached, ladder.length);
  return (
    <section className={`level level-${kind}`} data-shade={shade} aria-label="Level">
      <header className="level-head">
        {kind === 'at_least' && <span className="level-flag">Not settled</span>}
        <h2 id={id} className="level-heading" tabIndex={-1}>
          {level.heading}
        </h2>
        {level.couldBe !== null && <p className="level-could">{level.couldBe}</p>}
        {kind === 'settled' && (
          <p className="level-note">Settled: nothing needed is missing that could change it.</p>
        )}
      </header>
      <div className="level-body">
        <div className="level-words">
          {level.reasons.length > 0 && (
            <ul className="reasons">
              {keyed(level.reasons).map(({ key, line }) => (
                <li key={key}>{sentence(line)}</li>
              ))}
            </ul>
          )}
          {level.says !== null && <p className="level-says">{level.says}</p>}
          <Told level={level} />
          {level.doFirst.length > 0 && (
            <>
              <h3>{level.tell.length > 0 ? 'Until they come' : 'Do'}</h3>
              <ul className="do-first">
                {keyed(level.doFirst).map(({ key, line }) => (
                  <li key={key}>{line}</li>
                ))}
              </ul>
            </>
          )}
        </div>
        <Ladder level={level} />
      </div>
    </section>
  );
}

function Told({ level }: { readonly level: SheetLevel }): ReactNode {
  const rows = [
    ['Tell', level.tell],
    ['By when', level.byWhen],
    ['No answer', level.noAnswer],
    ['Next set', level.nextSet],
    ['Step down', level.stepDown],
  ] as const;
  const shown = rows.filter(([, words]) => words !== null && words.length > 0);
  if (shown.length === 0) return null;
  return (
    <dl className="told">
      {shown.map(([label, words]) => (
        <div key={label} className="told-row">
          <dt>{label}</dt>
          <dd>
            {typeof words === 'string'
              ? words
              : keyed(words ?? []).map(({ key, line }) => <span key={key}>{line}</span>)}
          </dd>
        </div>
      ))}
    </dl>
  );
}
