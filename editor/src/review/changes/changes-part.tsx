import { Fragment, type ReactNode } from 'react';
import type { ChangesHere } from './changes-here.ts';
import { CaseChanges } from './case-changes.tsx';
import type { Walk } from './example-button.tsx';
import { LevelCard } from './level-card.tsx';
import { Lines } from './lines.tsx';
import { OtherLevels } from './other-levels.tsx';
import { RuleCard } from './rule-card.tsx';
import { WordChanges } from './word-changes.tsx';

interface Props {
  readonly changes: ChangesHere;
  readonly walk: Walk;
}

/** All that changes, as sentences: what a patient would notice first, words last. */
export function ChangesPart({ changes, walk }: Props): ReactNode {
  const { levels, byProtocol, rules, renamed, limits } = changes;
  return (
    <>
      <Verdict changes={changes} />
      <Levels heading="Sets that get another level" levels={levels} notWhole={changes.notWhole} walk={walk} />
      <OtherLevels others={changes.others} walk={walk} />
      {byProtocol.map((each) => (
        <Fragment key={each.protocol}>
          <Levels
            heading={
              each.levels.length === 0 && each.notWhole === null
                ? `${each.protocol} by itself: no complete set gets another level from it`
                : `${each.protocol} by itself: sets that get another level from it`
            }
            levels={each.levels}
            notWhole={each.notWhole}
            walk={walk}
            isAlways
          />
          <OtherLevels others={each.others} walk={walk} />
        </Fragment>
      ))}
      {rules.length > 0 && <h2>Rules</h2>}
      {rules.map((rule) => (
        <RuleCard key={`${rule.protocol}.${rule.rule}`} rule={rule} walk={walk} />
      ))}
      {renamed.length + limits.length > 0 && (
        <section className="panel">
          <Lines as="h3" heading="Limits" lines={limits} />
          <Lines as="h3" heading="Renamed, and asking the same" lines={renamed} />
        </section>
      )}
      <WordChanges words={changes.words} />
      <CaseChanges cases={changes.cases} casesRead={changes.casesRead} />
    </>
  );
}

const headings = {
  nothing_changes: 'Nothing changes for any patient',
  changes: 'This changes what patients get',
  not_settled: 'Not settled',
} as const;

function Verdict({ changes: { verdict, says, over, notSettled } }: Pick<Props, 'changes'>): ReactNode {
  return (
    <section className="panel verdict" data-verdict={verdict}>
      <h2>{headings[verdict]}</h2>
      <p>{says}</p>
      <Lines as="h3" heading="Not settled: nobody knows" lines={notSettled} />
      <details>
        <summary>What this was asked of</summary>
        <Lines as="h3" heading="It is about" lines={over} />
      </details>
    </section>
  );
}

interface LevelsProps {
  readonly heading: string;
  readonly levels: ChangesHere['levels'];
  readonly notWhole: string | null;
  readonly walk: Walk;
  readonly isAlways?: boolean;
}

function Levels({ heading, levels, notWhole, walk, isAlways = false }: LevelsProps): ReactNode {
  if (levels.length === 0 && notWhole === null && !isAlways) return null;
  return (
    <>
      <h2>{heading}</h2>
      {notWhole !== null && <p className="panel not-whole">{notWhole}</p>}
      {levels.map((change) => (
        <LevelCard key={change.witness} change={change} walk={walk} />
      ))}
    </>
  );
}
