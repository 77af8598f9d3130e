import type { ReactNode } from 'react';
import { casesAreRead, type RuleHere } from '../../messages.ts';
import type { SideProps } from '../side-props.ts';
import { RuleRow } from './rule-row.tsx';
import { useUnguarded } from './use-unguarded.ts';

/** Rule by rule: the cases that meet it, and the small changes of it that no case would notice. */
export function RulesPanel(props: SideProps): ReactNode {
  const { open, ruleAtCaret, kind } = props;
  const rules = open.verdict.checked?.rules ?? [];
  const cases = open.verdict.checked?.cases ?? [];
  const fails = cases.filter(({ passes }) => !passes).length;
  const isRead = casesAreRead(open.verdict.checked);
  const unguarded = useUnguarded(open, kind === 'protocol' && fails === 0 && cases.length > 0);
  const shown = ruleAtCaret ? [ruleAtCaret, ...rules.filter(({ name }) => name !== ruleAtCaret.name)] : rules;
  return (
    <section className="panel" aria-label="Rules">
      <h2 className="panel-heading">
        Rules
        <span className="count">{rules.length}</span>
      </h2>
      <p className="hint" role="status">
        {kind === 'ward'
          ? 'The rules of a ward stand in its protocols; open one of them to see what its cases guard.'
          : !isRead
            ? 'cases.yaml has problems: mend them first.'
            : fails > 0
              ? 'Unguarded changes are looked for once every case passes.'
              : unguarded.inWords}
      </p>
      <ol className="rule-list">
        {shown.map((rule) => (
          <RuleRow
            key={rule.name}
            {...props}
            rule={rule}
            isAtCaret={isSame(rule, ruleAtCaret)}
            met={isRead ? cases.filter(({ met }) => met.includes(rule.name)).map(({ name }) => name) : null}
            unguarded={unguarded.found.filter(({ owner }) => owner === rule.name)}
          />
        ))}
        <RuleRow
          {...props}
          rule={{ name: '', title: 'Limits, measures and for whom it is', lines: null }}
          isAtCaret={false}
          met={null}
          unguarded={unguarded.found.filter(({ owner }) => rules.every(({ name }) => name !== owner))}
        />
      </ol>
    </section>
  );
}

const isSame = (rule: RuleHere, other: RuleHere | null): boolean => rule.name === other?.name;
