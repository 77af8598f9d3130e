import { useState, type ReactNode } from 'react';
import { resultsOf, resultsToCsv, type Answered } from '../../../src/index.ts';
import { download } from '../common/download.ts';
import { CountsTable } from './counts-table.tsx';
import { WipeDialog } from './wipe-dialog.tsx';

interface Props {
  readonly results: readonly Answered[];
  readonly onWipe: () => void;
}

/** All answers that this browser keeps: counted, to export, to wipe. */
export function ResultsPart({ results, onWipe }: Props): ReactNode {
  const [isAsking, setAsking] = useState(false);
  const [told, setTold] = useState('');
  const counted = resultsOf(results);
  return (
    <section className="panel results">
      <h2>Results in this browser</h2>
      <p role="status" className="hint" data-testid="results-said">
        {told}
      </p>
      {results.length === 0 ? (
        <p>
          There are none yet. Each case that you answer under Practise is counted here: what you called too
          little stands apart from what you called too much.
        </p>
      ) : (
        <>
          <p>{summary(counted)}</p>
          <CountsTable results={counted} />
          <p className="hint">
            Where a set is not settled, an answer between what is called for and what it could be counts on
            neither side: it is left open by the rule. Each answer counts, also when a case came back.
          </p>
          <div className="done-next">
            <button
              type="button"
              className="button button-strong"
              onClick={() => {
                download('drill-results.csv', resultsToCsv(results), document);
                setTold('The results were given to the browser as drill-results.csv.');
              }}
            >
              Export as CSV
            </button>
            <button type="button" className="button" onClick={() => setAsking(true)}>
              Wipe the results
            </button>
          </div>
        </>
      )}
      {isAsking && (
        <WipeDialog
          answers={results.length}
          onKeep={() => setAsking(false)}
          onWipe={() => {
            setAsking(false);
            onWipe();
            setTold('The results were wiped.');
          }}
        />
      )}
    </section>
  );
}

const summary = ({ answers, too_little: little, too_much: much }: ReturnType<typeof resultsOf>): string =>
  `${answers} ${answers === 1 ? 'answer' : 'answers'}: ${little} called too little, ${much} called too much.`;
