import { useEffect, useRef, type ReactNode } from 'react';
import {
  saidInWords,
  verdictInWords,
  verdictTitles,
  type DrillAnswer,
  type Verdict,
} from '../../../src/index.ts';
import { verdictOf, type LearnerSays } from './round.ts';

interface Props {
  readonly says: LearnerSays;
  readonly answer: DrillAnswer;
  /** `3 of 6 observations`, where not all had been shown; else null. */
  readonly early: string | null;
}

/** What was said beside what the rules say. It takes the focus, as it stands in the place of the form. */
export function VerdictCard({ says, answer, early }: Props): ReactNode {
  const verdict = verdictOf(says, answer);
  const { ladder } = answer.sheet.level;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  return (
    <section className={`verdict verdict-${verdict}`} aria-label="Your answer">
      <span className="verdict-flag">{verdictTitles[verdict]}</span>
      <h2 ref={heading} tabIndex={-1}>
        {verdictInWords(says.level, answer.rules, verdict)}
      </h2>
      <dl className="beside">
        <div>
          <dt>Your ward’s rule says</dt>
          <dd>{answer.rulesSay}</dd>
        </div>
        <div>
          <dt>You said</dt>
          <dd>{saidInWords(says.level, ladder)}</dd>
        </div>
      </dl>
      {early !== null && (
        <p className="hint">{`You answered after ${early}. The rule has read all that the case gives.`}</p>
      )}
    </section>
  );
}

/** What a screen reader is told once the answer is there. */
export const wordsOfVerdict = (says: LearnerSays, answer: DrillAnswer, verdict: Verdict): string =>
  `${verdictTitles[verdict]}. Your ward’s rule says: ${answer.rulesSay}. You said: ${saidInWords(says.level, answer.sheet.level.ladder)}.`;
