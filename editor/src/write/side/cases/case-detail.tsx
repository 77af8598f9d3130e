import { type ReactNode } from 'react';
import { keyed } from '../../../common/keyed.ts';
import { sentence } from '../../../common/sentence.ts';
import type { CaseHere, CaseInFull, RuleInCase } from '../../messages.ts';
import type { SideProps } from '../side-props.ts';
import { useCaseInFull } from './use-case-in-full.ts';

interface Props extends SideProps {
  readonly found: CaseHere;
}

/** One case in full: what is observed, what is said of it, and the rules that decided it. */
export function CaseDetail({ found, open, onChoose, onShow }: Props): ReactNode {
  const { name, passes, why, lines } = found;
  const full = useCaseInFull(open, name);
  const calling = full?.rules.filter(({ level }) => level !== null) ?? [];
  const others = full?.rules.filter(({ level }) => level === null) ?? [];
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
          <Plain lines={[...full.reasons, ...full.toGet]} />
          {full.reads.length > 0 && <OnTheWard full={full} />}
          <h3>What decided it</h3>
          {calling.length === 0 && <p className="hint">No rule calls for a level.</p>}
          <Rules rules={calling} onShow={onShow} />
          {others.length > 0 && <h3>Also met, without a level</h3>}
          <Rules rules={others} onShow={onShow} />
        </>
      )}
    </section>
  );
}

function Plain({ lines }: { readonly lines: readonly string[] }): ReactNode {
  if (lines.length === 0) return null;
  return (
    <ul className="plain">
      {keyed(lines).map(({ key, line }) => (
        <li key={key}>{sentence(line)}</li>
      ))}
    </ul>
  );
}

/** What only a ward has: a plan, several protocols, and who is on duty. */
function OnTheWard({ full: { plan, reads, tell } }: { readonly full: CaseInFull }): ReactNode {
  return (
    <>
      {plan !== null && <p>{plan}</p>}
      {tell.length > 0 && <p>{`Tell: ${tell.join('; ')}`}</p>}
      <h3>What each protocol calls for</h3>
      <Plain lines={reads} />
    </>
  );
}

interface RulesProps {
  readonly rules: readonly RuleInCase[];
  readonly onShow: SideProps['onShow'];
}

function Rules({ rules, onShow }: RulesProps): ReactNode {
  if (rules.length === 0) return null;
  return (
    <ul className="deciding">
      {rules.map((rule) => (
        <Deciding key={rule.name} rule={rule} onShow={onShow} />
      ))}
    </ul>
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
      <Plain lines={decidedBy} />
    </li>
  );
}
