import type { ReactNode } from 'react';
import { outputAndVessels, type DrillAnswer } from '../../../src/index.ts';
import { keyed } from '../common/keyed.ts';
import type { LearnerSays } from './round.ts';

interface Props {
  readonly says: LearnerSays;
  readonly answer: DrillAnswer;
}

/** What was said of output and vessels, what the case says, and the protocol's own sentences; no rule judges it. */
export function OutputBeside({ says, answer: { outputAndVessels: told } }: Props): ReactNode {
  return (
    <section className="panel" aria-label="Output and vessels">
      <h3 className="panel-heading">Output and vessels</h3>
      <dl className="beside">
        <div>
          <dt>Whoever wrote the case says</dt>
          <dd>{told.caseSays ?? 'Nothing about it'}</dd>
        </div>
        <div>
          <dt>You said</dt>
          <dd>{says.output === null ? 'Nothing' : outputAndVessels[says.output]}</dd>
        </div>
      </dl>
      {told.ownSentences.length > 0 ? (
        <>
          <h4 className="small-heading">What the rules that are met say about it</h4>
          <ul className="plain">
            {keyed(told.ownSentences).map(({ key, line }) => (
              <li key={key}>{line}</li>
            ))}
          </ul>
        </>
      ) : (
        <p className="hint">No rule that is met here speaks of output or vessels.</p>
      )}
    </section>
  );
}

/** What the rules that are met ask, beside what the learner would have asked. */
export function AskBeside({ says, answer: { asks } }: Props): ReactNode {
  const more = says.asks.filter((each) => !asks.includes(each));
  return (
    <section className="panel" aria-label="What to ask">
      <h3 className="panel-heading">What to ask</h3>
      {asks.length > 0 ? (
        <>
          <p className="hint">The rules that are met ask:</p>
          <ul className="plain">
            {asks.map((each) => (
              <li key={each}>
                {each}
                {says.asks.includes(each) && <strong className="too"> ✓ you asked this too</strong>}
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p className="hint">No rule that is met here asks anything.</p>
      )}
      {(more.length > 0 || says.ownWords.trim() !== '') && (
        <>
          <h4 className="small-heading">You also asked</h4>
          <ul className="plain">
            {more.map((each) => (
              <li key={each}>{each}</li>
            ))}
            {says.ownWords.trim() !== '' && <li className="own-words">{says.ownWords.trim()}</li>}
          </ul>
        </>
      )}
    </section>
  );
}
