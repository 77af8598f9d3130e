import { type ReactNode } from 'react';
import { keyed } from '../../../common/keyed.ts';
import { sentence } from '../../../common/sentence.ts';
import type { CaseHere, RuleInCase } from '../../messages.ts';
import type { SideProps } from '../side-props.ts';
import { useCaseInFull } from './use-case-in-full.ts';

interface Props extends SideProps {
  readonly found: CaseHere;
}

/** One case in full: what is observed, what is said of it, and the rules that decided it. */
export function CaseDetail({ found, open, onChoose, onShow }: Props): ReactNode {
  const { name, passes, why, lines } = found;
  const full = useCaseInFull(open, name);
  return (
    <section className="panel case-detail" aria-label="The chosen case">
      <div className="panel-top">
        <h2 className="panel-heading">{name}</h2>
        <button type="button" className="quiet" onClick={() => onChoose(null)}>
          Close
        </button>
      </div>
      <p>
        <strong>{passes ? 'Passes. ' : 'Fails. '}</strong>
        {!passes && keyed(why).map(({ key, line }) => <span key={key}>{`${line} `}</span>)}
        <button type="button" className="link-button" onClick={() => onShow('cases', lines.first)}>
          {`cases.yaml, line ${lines.first}`}
        </button>
      </p>
      {full && (
        <>
          <table className="observed-table">
            <caption>What is observed</caption>
            <tbody>
              {full.observed.map(({ title, words }) => (
                <tr key={title}>
                  <th scope="row">{sentence(title)}</th>
                  <td>{words}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="case-outcome">
            <strong>{full.heading}</strong>
            {full.couldBe !== null && <span>{full.couldBe}</span>}
          </p>
          <ul className="plain">
            {keyed(full.reasons).map(({ key, line }) => (
              <li key={key}>{sentence(line)}</li>
            ))}
          </ul>
          {full.plan !== null && <p>{full.plan}</p>}
          {full.reads.length > 0 && (
            <>
              <h3>What each protocol calls for</h3>
              <ul className="plain">
                {keyed(full.reads).map(({ key, line }) => (
                  <li key={key}>{line}</li>
                ))}
              </ul>
              {full.tell.length > 0 && <p>{`Told: ${full.tell.join('; ')}`}</p>}
            </>
          )}
          <h3>What decided it</h3>
          {full.rules.length === 0 && <p className="hint">No rule is met.</p>}
          <ul className="deciding">
            {full.rules.map((rule) => (
              <Deciding key={rule.name} rule={rule} onShow={onShow} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function Deciding({
  rule,
  onShow,
}: {
  readonly rule: RuleInCase;
  readonly onShow: SideProps['onShow'];
}): ReactNode {
  const { title, of, level, decidedBy, lines } = rule;
  return (
    <li>
      <p className="deciding-title">
        <strong>{title}</strong>
        {of !== null && <span>{of}</span>}
        {level !== null && <span>{level}</span>}
        {lines && (
          <button type="button" className="link-button" onClick={() => onShow('protocol', lines.first)}>
            {lines.first === lines.last ? `line ${lines.first}` : `lines ${lines.first} to ${lines.last}`}
          </button>
        )}
      </p>
      <ul className="plain">
        {keyed(decidedBy).map(({ key, line }) => (
          <li key={key}>{sentence(line)}</li>
        ))}
      </ul>
    </li>
  );
}
