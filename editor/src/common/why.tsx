import type { ReactNode } from 'react';
import type { Sheet } from '../../../src/index.ts';
import { keyed } from './keyed.ts';
import { sentence } from './sentence.ts';

/** Why: the rules that are met or count, in the outcome's own sentences. */
export function Why({ sheet }: { readonly sheet: Sheet }): ReactNode {
  const { why, notReassuring, takenBack, level } = sheet;
  const reached = level.ladder[level.reached ?? -1];
  if (why.length + notReassuring.length + takenBack.length === 0) return null;
  return (
    <section className="panel why" aria-label="Why">
      <h3 className="panel-heading">Why</h3>
      {why.map((rule) => (
        <details key={rule.rule} className="rule" open={rule.level !== null && rule.level === reached}>
          <summary>
            <span className="rule-title">
              {rule.title}
              {rule.of !== null && <span className="rule-of">{rule.of}</span>}
            </span>
            {rule.level !== null && <span className="rule-level">{rule.level}</span>}
          </summary>
          {rule.from !== null && <p className="hint">{rule.from}</p>}
          {rule.says !== null && <p>{rule.says}</p>}
          <Lines lines={rule.decidedBy} className="decided" />
          {rule.because !== null && <p className="because">{rule.because}</p>}
          <Lines lines={rule.notes} className="notes" />
          <Titled title="Ask" lines={rule.ask} />
        </details>
      ))}
      <Titled title="Not met, but that reassures nobody" lines={notReassuring} />
      <Titled title="Taken back by an exception" lines={takenBack} />
    </section>
  );
}

function Titled({ title, lines }: { readonly title: string; readonly lines: readonly string[] }): ReactNode {
  if (lines.length === 0) return null;
  return (
    <div className="titled">
      <h4>{title}</h4>
      <Lines lines={lines} className="plain" />
    </div>
  );
}

export function Lines({
  lines,
  className,
}: {
  readonly lines: readonly string[];
  readonly className: string;
}): ReactNode {
  if (lines.length === 0) return null;
  return (
    <ul className={className}>
      {keyed(lines).map(({ key, line }) => (
        <li key={key}>{sentence(line)}</li>
      ))}
    </ul>
  );
}
