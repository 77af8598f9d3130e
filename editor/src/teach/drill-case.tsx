import { useState, type ReactNode } from 'react';
import type { Answered, Card } from '../../../src/index.ts';
import { withOffset } from '../common/clock.ts';
import { Fault } from '../common/fault-boundary.tsx';
import { AnswerForm } from './answer-form.tsx';
import { AnswerShown } from './answer-shown.tsx';
import { CaseSide } from './case-side.tsx';
import type { PageLessons } from './messages.ts';
import { answeredAs, verdictOf, type LearnerSays, type Round } from './round.ts';
import { useCase } from './use-case.ts';
import { nothingSeen, seenOf, type Seen } from './seen.ts';
import { wordsOfVerdict } from './verdict-card.tsx';

interface Props {
  readonly card: Card;
  readonly round: Round;
  readonly lessons: PageLessons;
  readonly onAnswered: (answer: Answered) => void;
  readonly onNext: () => void;
  readonly onLeave: () => void;
}

/** One case: it unfolds on one side; on the other the learner answers, and then reads what the rules say. */
export function DrillCase({ card, round, lessons, onAnswered, onNext, onLeave }: Props): ReactNode {
  const [seen, setSeen] = useState<Seen>(nothingSeen);
  const [says, setSays] = useState<LearnerSays | null>(null);
  const [isKept, setKept] = useState(false);
  const [said, setSaid] = useState('');
  const { drill, answer, failed } = useCase(card.name, card.showing, says !== null);
  if (says && answer && !isKept) {
    setKept(true);
    setSaid(wordsOfVerdict(says, answer, verdictOf(says, answer)));
    onAnswered(answeredAs(says, answer, lessons, { at: withOffset(new Date()), showing: card.showing }));
  }
  if (failed) return <Fault />;
  if (!drill) return <p className="waiting">Opening the case…</p>;
  const { given, shown } = seenOf(drill, seen);
  return (
    <>
      <p className="visually-hidden" role="status" data-testid="said">
        {said}
      </p>
      <DrillHead card={card} round={round} onLeave={onLeave} />
      <div className="drill">
        <CaseSide
          drill={drill}
          seen={seen}
          name={answer && says ? answer.name : null}
          onSee={(next, words) => {
            setSeen(next);
            setSaid(words);
          }}
        />
        {says && answer ? (
          <AnswerShown
            says={says}
            answer={answer}
            drill={drill}
            isLast={round.deck.length <= 1}
            onNext={onNext}
          />
        ) : (
          <AnswerForm
            lessons={lessons}
            onAnswer={(level, output, asks, ownWords) =>
              setSays({ level, output, asks, ownWords, seen: shown, given })
            }
          />
        )}
      </div>
    </>
  );
}

function DrillHead({ card, round, onLeave }: Pick<Props, 'card' | 'round' | 'onLeave'>): ReactNode {
  const left = round.deck.length - 1;
  return (
    <div className="drill-head">
      <p>
        <strong>{round.title}</strong>
        <span className="count">
          {round.cases === 1 ? '' : left === 0 ? 'the last one of this deck' : `${left} more to come`}
        </span>
        {card.showing > 1 && <span className="back">You met this one before: it has come back</span>}
      </p>
      <button type="button" className="button" onClick={onLeave}>
        {round.cases === 1 ? 'Choose a deck' : 'Leave this deck'}
      </button>
    </div>
  );
}
