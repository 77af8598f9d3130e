import { useState, type ReactNode } from 'react';
import { casesAreRead, type CaseHere } from '../../messages.ts';
import type { SideProps } from '../side-props.ts';
import { CaseDetail } from './case-detail.tsx';
import { CaseRow } from './case-row.tsx';

/** So many cases are listed at once. */
const most = 150;

/** Every case, pass or fail and why, as the texts stand now. */
export function CasesPanel(props: SideProps): ReactNode {
  const { open, ruleAtCaret, chosen, onChoose, onNewCase, kind } = props;
  const [onlyRule, setOnlyRule] = useState(false);
  const [all, setAll] = useState(false);
  const cases = open.verdict.checked?.cases ?? [];
  const isRead = casesAreRead(open.verdict.checked);
  const rule = onlyRule ? ruleAtCaret : null;
  const shown = inOrder(rule ? cases.filter(({ met }) => met.includes(rule.name)) : cases);
  const found = cases.find(({ name }) => name === chosen);
  return (
    <>
      {found && <CaseDetail {...props} found={found} />}
      <section className="panel cases" aria-label="Cases" aria-busy={!open.isFresh}>
        <div className="panel-top">
          <h2 className="panel-heading">
            Cases
            <span className="count">{isRead ? countInWords(cases) : 'not read'}</span>
          </h2>
          {kind === 'protocol' && (
            <button type="button" className="button" onClick={onNewCase}>
              New case
            </button>
          )}
        </div>
        {ruleAtCaret && (
          <p className="tick">
            <input
              id="only-rule"
              type="checkbox"
              checked={onlyRule}
              onChange={(event) => setOnlyRule(event.target.checked)}
            />
            <label htmlFor="only-rule">{`Only those that meet the rule at the caret: ${ruleAtCaret.title}`}</label>
          </p>
        )}
        {cases.length === 0 && !isRead && (
          <p>cases.yaml has problems, so no case can be run. Mend them first.</p>
        )}
        {cases.length === 0 && isRead && (
          <p className="hint">
            There is no case yet. A case says what you expect for one made-up patient; from then on it shows
            at once when a change of the protocol says otherwise.
          </p>
        )}
        {rule && shown.length === 0 && (
          <p className="hint">No case meets this rule, so nobody would notice if it never were.</p>
        )}
        <ol className="case-list">
          {shown.slice(0, all ? undefined : most).map((each) => (
            <CaseRow key={each.name} found={each} isChosen={each.name === chosen} onChoose={onChoose} />
          ))}
        </ol>
        {!all && shown.length > most && (
          <button type="button" className="button" onClick={() => setAll(true)}>
            {`Show the other ${shown.length - most}`}
          </button>
        )}
      </section>
    </>
  );
}

/** Those that fail first, then the others, each in the order of the file. */
const inOrder = (cases: readonly CaseHere[]): readonly CaseHere[] => [
  ...cases.filter(({ passes }) => !passes),
  ...cases.filter(({ passes }) => passes),
];

function countInWords(cases: readonly CaseHere[]): string {
  const failing = cases.filter(({ passes }) => !passes).length;
  if (cases.length === 0) return 'none yet';
  if (failing === 0) return cases.length === 1 ? 'the only one passes' : `all ${cases.length} pass`;
  return `${failing} of ${cases.length} ${failing === 1 ? 'fails' : 'fail'}`;
}
