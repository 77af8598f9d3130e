import { useState, type ReactNode } from 'react';
import type { Answered } from '../../../src/index.ts';
import type { RoomProps } from '../common/room.ts';
import { ChooseDeck } from './choose-deck.tsx';
import { DeckDone } from './deck-done.tsx';
import { DrillCase } from './drill-case.tsx';
import type { PageLessons } from './messages.ts';
import { nextCard, startRound, type Round } from './round.ts';

interface Props extends Pick<RoomProps, 'address' | 'onGo'> {
  readonly lessons: PageLessons;
  readonly onAnswered: (answer: Answered) => void;
}

/** From choosing a deck, case by case, to its end. An address that names a case opens that one alone. */
export function Practise({ address, onGo, lessons, onAnswered }: Props): ReactNode {
  const [round, setRound] = useState<Round | null>(null);
  const [isBack, setBack] = useState(false);
  const [named, setNamed] = useState<string | null>(null);
  const there = lessons.cards.some(({ name }) => name === address.case);
  if (address.case !== named) {
    setNamed(address.case);
    if (address.case !== null && there) setRound(startRound('One case', [address.case], 0));
  }
  const choose = (): void => {
    setRound(null);
    setBack(true);
    if (address.case !== null) onGo({ case: null });
  };
  if (!round) {
    return (
      <ChooseDeck
        lessons={lessons}
        takesFocus={isBack}
        lost={address.case !== null && !there ? address.case : null}
        onStart={(title, names) => setRound(startRound(title, names, Date.now()))}
        onOpen={(name) => onGo({ case: name })}
      />
    );
  }
  const [card] = round.deck;
  if (!card) {
    return (
      <DeckDone
        round={round}
        onAgain={(names) => setRound(startRound(round.title, names, Date.now()))}
        onChoose={choose}
      />
    );
  }
  return (
    <DrillCase
      key={`${round.done} ${card.name}`}
      card={card}
      round={round}
      lessons={lessons}
      onAnswered={(answer) => {
        onAnswered(answer);
        setRound({ ...round, answers: [...round.answers, answer] });
      }}
      onNext={() => setRound(nextCard(round))}
      onLeave={choose}
    />
  );
}
