import { useEffect, useState, type ReactNode } from 'react';
import { Fault } from '../common/fault-boundary.tsx';
import { keyed } from '../common/keyed.ts';
import { sentence } from '../common/sentence.ts';
import type { HeldBack } from './entries.ts';
import { Outcome } from './outcome.tsx';
import type { Reading } from './use-reading.ts';

interface Props {
  readonly reading: Reading;
  readonly held: readonly HeldBack[];
  readonly isTyping: boolean;
  /** Whether the outcome of the last value is still being worked out. */
  readonly isBehind: boolean;
  readonly isBlank: boolean;
  /** Whether anything was taken yet, so that the set has a time. */
  readonly hasTime: boolean;
  readonly bed: string;
  readonly onHandOver: () => void;
  readonly onMakeCase: () => void;
}

/** The side of the room where the outcome stands, and what a screen reader is told of it. */
export function OutcomeSide({
  reading,
  held,
  isTyping,
  isBehind,
  isBlank,
  hasTime,
  bed,
  onHandOver,
  onMakeCase,
}: Props): ReactNode {
  const said = useAnnounced(reading, held, isBlank);
  const older = isTyping ? beingWritten : isBehind ? beingRead : null;
  return (
    <div className="outcome-side">
      <p className="visually-hidden" role="status" data-testid="said">
        {said}
      </p>
      {reading.state === 'failed' && <Fault />}
      {reading.state === 'problems' && (
        <section className="before refused" role="alert">
          <h3>This cannot be read; there is no outcome</h3>
          <ul className="plain">
            {keyed(reading.problems).map(({ key, line }) => (
              <li key={key}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      {reading.state === 'read' && (
        <>
          {!isBlank && (
            <div className="sheet-head">
              <p className="sheet-of">
                {bed.trim() !== '' && <strong>{bed.trim()}</strong>}
                {hasTime && reading.reading.sheet.at !== null && (
                  <span>{`Set of ${reading.reading.sheet.at}`}</span>
                )}
              </p>
              <span className="sheet-actions">
                <button type="button" className="button" onClick={() => print()}>
                  Print
                </button>
                <button type="button" className="button button-strong" onClick={onHandOver}>
                  Handoff
                </button>
              </span>
            </div>
          )}
          <Observed reading={reading} />
          <Outcome reading={reading.reading} held={held} older={older} isBlank={isBlank} />
          {!isBlank && (
            <button type="button" className="quiet make-case" onClick={onMakeCase}>
              Make a case of this set
            </button>
          )}
        </>
      )}
      {reading.state === 'read' && (
        <a className="jump" href="#outcome" onClick={jump} data-kind={reading.reading.sheet.level.kind}>
          <strong>{reading.reading.sheet.level.heading}</strong>
          {older !== null && <span>{older}</span>}
          {reading.reading.sheet.level.couldBe !== null && <span>{reading.reading.sheet.level.couldBe}</span>}
        </a>
      )}
    </div>
  );
}

/** Nobody is to take an older outcome for that of the value just entered. */
const beingWritten = 'A value is being written. This is the outcome of the values before it.';
const beingRead = 'The last value is being read. This is the outcome of the values before it.';

/** The address is not to change, so the jump is made by hand. */
function jump(event: { preventDefault: () => void }): void {
  event.preventDefault();
  const heading = document.getElementById('outcome');
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: 'start' });
}

/** The set itself, for print alone: on the screen it stands in the fields. */
function Observed({ reading }: { readonly reading: Extract<Reading, { state: 'read' }> }): ReactNode {
  return (
    <table className="observed print-only">
      <caption>The set</caption>
      <tbody>
        {reading.reading.sheet.observed.map(({ observation, title, words }) => (
          <tr key={observation}>
            <th scope="row">{sentence(title)}</th>
            <td>{words}</td>
          </tr>
        ))}
        {keyed(reading.reading.facts.standing).map(({ key, line }) => (
          <tr key={key}>
            <th scope="row">Stated</th>
            <td>{line}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What is said once things have come to rest, politely, and only when it changes. */
function useAnnounced(reading: Reading, held: readonly HeldBack[], isBlank: boolean): string {
  const [said, setSaid] = useState('');
  const words = reading.state === 'read' && !isBlank ? wordsOf(reading, held) : '';
  useEffect(() => {
    const timer = setTimeout(() => setSaid(words), 400);
    return () => clearTimeout(timer);
  }, [words]);
  return said;
}

function wordsOf({ reading }: Extract<Reading, { state: 'read' }>, held: readonly HeldBack[]): string {
  const { level, refused, questioned } = reading.sheet;
  const notUsed = [...held, ...refused].map(({ says }) => `Not used: ${says}`);
  const asked = questioned.map(({ says }) => `Questioned: ${says}`);
  return [...new Set([...notUsed, ...asked]), level.heading, level.couldBe ?? '']
    .filter((each) => each !== '')
    .join('. ');
}
