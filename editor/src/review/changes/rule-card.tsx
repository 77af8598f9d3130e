import { Fragment, type ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { sentence } from '../../common/sentence.ts';
import type { RuleChange } from './changes-here.ts';
import { ExampleButton, type Walk } from './example-button.tsx';
import { WhichSets } from './which-sets.tsx';

interface Props {
  readonly rule: RuleChange;
  readonly walk: Walk;
}

/** A rule that other sets meet, or that is written otherwise. */
export function RuleCard({ rule, walk }: Props): ReactNode {
  const { title, is, differences, stands, protocol, rule: name } = rule;
  return (
    <article className="panel change rule-change">
      <h3>{`${title}: ${is}`}</h3>
      <p className="hint">
        <code>{`${protocol}.${name}`}</code>
      </p>
      {differences.length > 0 && (
        <ul className="plain">
          {keyed(differences).map(({ key, line }) => (
            <li key={key}>{sentence(line)}</li>
          ))}
        </ul>
      )}
      {stands.map((stand) => (
        <Fragment key={stand.witness}>
          <h4>{`${sentence(stand.before)} before, ${stand.after} now`}</h4>
          <WhichSets sets={stand.sets} ground={stand.ground} />
          <ExampleButton at={stand.witness} walk={walk} />
        </Fragment>
      ))}
    </article>
  );
}
