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
        {level.settledBy !== null && <p className="level-note">{level.settledBy}</p>}
      </header>
      <div className="level-body">
        <div className="level-words">
          {level.worried !== null && (
            <p className="worried">
              <strong>Worried? </strong>
              {level.worried}
            </p>
          )}
          {level.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          <Points lines={level.reasons} className="reasons" />
          {level.says !== null && <p className="level-says">{level.says}</p>}
          <Told level={level} />
          {level.doFirst.length > 0 && <h3>{level.doHeading}</h3>}
          <Points lines={level.doFirst} className="do-first" />
          {level.latest !== null && <Latest level={level.latest} title={level.couldBe ?? ''} />}
          <MayRaise level={level} />
          {level.alone !== null && <p className="hint">{level.alone}</p>}
        </div>
        <Ladder level={level} />
      </div>
    </section>
  );
}

function Points({
  lines,
  className,
}: {
  readonly lines: readonly string[];
  readonly className: string;
}): ReactNode {
  if (lines.length === 0) return null;
  return (
    <ul className={className}>
      {keyed(lines).map(({ key, line }) => (
        <li key={key}>{sentence(line)}</li>
      ))}
    </ul>
  );
}

/** What only helps and could still take it higher: told, and never in the way of what to do. */
function MayRaise({ level: { mayRaise } }: { readonly level: SheetLevel }): ReactNode {
  if (mayRaise.length === 0) return null;
  return (
    <>
      <h3>Take or ask these too, they could still take it higher</h3>
      <Points lines={mayRaise} className="may-raise" />
    </>
  );
}

/** What the latest set calls for by itself, where a level of earlier sets still holds. */
function Latest({ level, title }: { readonly level: SheetLevel; readonly title: string }): ReactNode {
  return (
    <>
      <h3>{title}</h3>
      {level.couldBe !== null && <p>{`Not settled. ${level.couldBe}.`}</p>}
      {level.settledBy !== null && <p>{level.settledBy}</p>}
      {level.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      <Points lines={level.reasons} className="reasons" />
      <MayRaise level={level} />
    </>
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
