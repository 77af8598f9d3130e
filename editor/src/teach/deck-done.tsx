import { useEffect, useRef, type ReactNode } from 'react';
import { isMissed, resultsOf } from '../../../src/index.ts';
import { casesInWords } from './decks.ts';
import { CountsTable } from './counts-table.tsx';
import type { Round } from './round.ts';

interface Props {
  readonly round: Round;
  readonly onAgain: (names: readonly string[]) => void;
  readonly onChoose: () => void;
}

/** The end of a deck: how it went, too little apart from too much, and what to do next. */
export function DeckDone({ round, onAgain, onChoose }: Props): ReactNode {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  const missed = [
    ...new Set(round.answers.filter(({ verdict }) => isMissed(verdict)).map((each) => each.case)),
  ];
  const names = [...new Set(round.answers.map((each) => each.case))];
  const again = missed.length > 0 && missed.length < names.length;
  return (
    <section className="panel done">
      <h2 ref={heading} tabIndex={-1}>
        {round.cases === 1 ? 'That was the case' : `That was the deck: ${casesInWords(round.cases)}`}
      </h2>
      <p role="status" data-testid="said">
        {howItWent(missed.length)}
      </p>
      <CountsTable results={resultsOf(round.answers)} />
      <div className="done-next">
        {again && (
          <button type="button" className="button button-strong" onClick={() => onAgain(missed)}>
            {`Only the missed ones: ${casesInWords(missed.length)}`}
          </button>
        )}
        <button type="button" className="button" onClick={() => onAgain(names)}>
          {names.length === 1 ? 'The same case again' : 'The whole deck again'}
        </button>
        <button type="button" className="button" onClick={onChoose}>
          Choose another deck
        </button>
      </div>
    </section>
  );
}

function howItWent(missed: number): string {
  if (missed === 0) return 'Nothing was called too low or too high.';
  return missed === 1
    ? 'One case was called too low or too high. Look at it once more on another day.'
    : `${missed} cases were called too low or too high. Look at them once more on another day.`;
}
