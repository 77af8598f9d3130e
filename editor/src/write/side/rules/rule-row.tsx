import type { ReactNode } from 'react';
import type { UnguardedChange } from '../../../../../src/index.ts';
import type { RuleHere } from '../../messages.ts';
import type { SideProps } from '../side-props.ts';

interface Props extends SideProps {
  readonly rule: RuleHere;
  readonly isAtCaret: boolean;
  /** Names of the cases that meet it; null for what is no rule. */
  readonly met: readonly string[] | null;
  readonly unguarded: readonly UnguardedChange[];
}

export function RuleRow({ rule, isAtCaret, met, unguarded, ...props }: Props): ReactNode {
  const { onShow, onChoose } = props;
  if (rule.name === '' && unguarded.length === 0) return null;
  return (
    <li className="rule-row" data-caret={isAtCaret}>
      <details open={isAtCaret || undefined}>
        <summary>
          <span className="rule-row-title">{rule.title}</span>
          <span className="count">{stateOf(met, unguarded, isAtCaret)}</span>
        </summary>
        {rule.lines && <RuleLines lines={rule.lines} onShow={onShow} />}
        {met && met.length === 0 && <p className="hint">No case meets it.</p>}
        {met && met.length > 0 && (
          <ul className="meeting">
            {met.map((name) => (
              <li key={name}>
                <button type="button" className="link-button" onClick={() => onChoose(name)}>
                  {name}
                </button>
              </li>
            ))}
          </ul>
        )}
        {unguarded.length > 0 && (
          <>
            <h3>Changes that no case would notice</h3>
            <ul className="unguarded">
              {unguarded.map((change) => (
                <Unguarded key={change.name} {...props} change={change} />
              ))}
            </ul>
          </>
        )}
      </details>
    </li>
  );
}

function RuleLines({
  lines,
  onShow,
}: {
  readonly lines: NonNullable<RuleHere['lines']>;
  readonly onShow: SideProps['onShow'];
}): ReactNode {
  return (
    <button type="button" className="link-button" onClick={() => onShow('protocol', lines.first)}>
      {`Show it: lines ${lines.first} to ${lines.last}`}
    </button>
  );
}

interface UnguardedProps extends Pick<SideProps, 'onShow' | 'onAddCase'> {
  readonly change: UnguardedChange;
}

function Unguarded({ change, onShow, onAddCase }: UnguardedProps): ReactNode {
  const { name, line, yaml, because, accepted } = change;
  return (
    <li>
      <p>
        {name}{' '}
        <button type="button" className="link-button" onClick={() => onShow('protocol', line)}>
          {`line ${line}`}
        </button>
      </p>
      {accepted !== null && <p className="hint">{`Left so on purpose: ${accepted}`}</p>}
      {yaml !== null && accepted === null && (
        <button type="button" className="button" onClick={() => onAddCase(yaml)}>
          Add the missing case
        </button>
      )}
      {because !== null && <p className="hint">{because}</p>}
    </li>
  );
}

function stateOf(
  met: readonly string[] | null,
  unguarded: readonly UnguardedChange[],
  isAtCaret: boolean,
): string {
  const open = unguarded.filter(({ accepted }) => accepted === null).length;
  const words = [
    ...(isAtCaret ? ['at the caret'] : []),
    ...(met ? [`met in ${met.length === 1 ? 'one case' : `${met.length} cases`}`] : []),
    ...(open > 0 ? [`${open} unguarded`] : []),
  ];
  return words.join(', ');
}
