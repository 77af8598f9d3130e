import { useEffect, useId, useRef, useState, type ReactNode } from 'react';
import { keyed } from '../common/keyed.ts';
import { casesInWords, decksOf } from './decks.ts';
import type { PageLessons } from './messages.ts';

interface Props {
  readonly lessons: PageLessons;
  /** Whether somebody comes back here from a deck. */
  readonly takesFocus: boolean;
  /** A case that the address names and that is not here. */
  readonly lost: string | null;
  readonly onStart: (title: string, names: readonly string[]) => void;
  readonly onOpen: (name: string) => void;
}

/** Where a learner begins: which deck, and how the drill goes. */
export function ChooseDeck(props: Props): ReactNode {
  const { lessons, lost } = props;
  return (
    <div className="choose">
      {lost !== null && (
        <p className="before" role="alert">
          {`There is no case “${lost}” here, or it does not come out as expected. Choose another one below.`}
        </p>
      )}
      {lessons.cards.length === 0 ? <NoCases /> : <Chooser {...props} />}
      <LeftOut lessons={lessons} />
    </div>
  );
}

function NoCases(): ReactNode {
  return (
    <section className="panel empty">
      <h2>There is nothing to practise on yet</h2>
      <p>
        A drill needs cases: invented patients with their observations and the level that the council expects.
        They stand in a file cases.yaml beside the protocol.
      </p>
      <p>
        Choose another protocol above, or write a first case in the Write room. The handout can be printed as
        it is.
      </p>
    </section>
  );
}

function Chooser({ lessons, takesFocus, onStart, onOpen }: Props): ReactNode {
  const id = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (takesFocus) heading.current?.focus();
  }, [takesFocus]);
  const teaching = lessons.cards.filter(({ teaches }) => teaches).length;
  const [withAll, setWithAll] = useState(teaching === 0);
  const groups = decksOf(lessons, withAll);
  const decks = groups.flatMap((group) => group.decks);
  const [chosen, setChosen] = useState('all');
  const deck = decks.find((each) => each.id === chosen) ?? decks[0];
  return (
    <section className="panel chooser" aria-labelledby={`${id}-heading`}>
      <h2 ref={heading} tabIndex={-1} id={`${id}-heading`}>
        Practise on cases
      </h2>
      <p>
        A patient unfolds before you, bit by bit. You say the level, what output and vessels are doing, and
        what you would ask. Then you see what your ward’s rule says, and why. A case that you called too low
        or too high comes back a little later.
      </p>
      <div className="chooser-fields">
        <label htmlFor={`${id}-deck`}>Deck</label>
        <select id={`${id}-deck`} value={deck?.id ?? ''} onChange={(event) => setChosen(event.target.value)}>
          {groups.map((group) => (
            <optgroup key={group.heading} label={group.heading}>
              {group.decks.map(({ id: each, title, names }) => (
                <option key={each} value={each}>
                  {`${title} (${casesInWords(names.length)})`}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
        <button
          type="button"
          className="button button-strong"
          disabled={!deck}
          onClick={() => deck && onStart(deck.title, deck.names)}
        >
          {deck ? `Start: ${casesInWords(deck.names.length)}` : 'Start'}
        </button>
      </div>
      {teaching > 0 && (
        <label className="tick">
          <input type="checkbox" checked={withAll} onChange={(event) => setWithAll(event.target.checked)} />
          <span>
            {`Also the ${casesInWords(lessons.cards.length - teaching)} that were written to hold a rule in place, not to teach`}
          </span>
        </label>
      )}
      <OneCase lessons={lessons} onOpen={onOpen} />
    </section>
  );
}

/** For whoever teaches: a case by its name, which has an address of its own. */
function OneCase({ lessons, onOpen }: Pick<Props, 'lessons' | 'onOpen'>): ReactNode {
  const id = useId();
  const [name, setName] = useState(lessons.cards[0]?.name ?? '');
  return (
    <details className="one-case">
      <summary>Open one case by its name</summary>
      <p className="hint">
        The name often gives the case away. Its address can be sent to learners: it leads right to the case.
      </p>
      <div className="chooser-fields">
        <label htmlFor={`${id}-case`}>Case</label>
        <select id={`${id}-case`} value={name} onChange={(event) => setName(event.target.value)}>
          {lessons.cards.map((card) => (
            <option key={card.name} value={card.name}>
              {card.name}
            </option>
          ))}
        </select>
        <button type="button" className="button" onClick={() => onOpen(name)}>
          Open this case
        </button>
      </div>
    </details>
  );
}

function LeftOut({ lessons: { leftOut, problems } }: Pick<Props, 'lessons'>): ReactNode {
  if (leftOut.length + problems.length === 0) return null;
  return (
    <details className="panel">
      <summary>{`${casesInWords(leftOut.length)} left out, ${problems.length} problems in the file of cases`}</summary>
      <p>
        Nobody is taught from a case that cannot be read, or that does not come out as the council expects.
      </p>
      <ul className="plain">
        {keyed([...leftOut, ...problems]).map(({ key, line }) => (
          <li key={key}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
