import type { ReactNode } from 'react';
import type { LevelByExample, Others } from './changes-here.ts';
import { ExampleButton, type Walk } from './example-button.tsx';
import { directions } from './level-card.tsx';

interface Props {
  readonly others: Others | null;
  readonly walk: Walk;
}

/** Changes of level of which no region is told: each by its example. */
export function OtherLevels({ others, walk }: Props): ReactNode {
  if (!others) return null;
  const { complete, incomplete, whole, says } = others;
  return (
    <>
      <ByExample heading="Other changes of level" says={says.complete} changes={complete} walk={walk} />
      <ByExample
        heading="While something is missing"
        says={says.incomplete}
        changes={incomplete}
        walk={walk}
      />
      {whole !== null && <p className="panel">{whole}</p>}
    </>
  );
}

interface ListProps {
  readonly heading: string;
  readonly says: string;
  readonly changes: readonly LevelByExample[];
  readonly walk: Walk;
}

function ByExample({ heading, says, changes, walk }: ListProps): ReactNode {
  if (changes.length === 0) return null;
  return (
    <section className="panel change">
      <h3>{heading}</h3>
      <p>{says}</p>
      <ul className="by-example">
        {changes.map(({ before, after, direction, witness }) => (
          <li key={witness}>
            <p>
              <span className="change-direction">{`${directions[direction]}: `}</span>
              {`“${before}” becomes “${after}”`}
            </p>
            <ExampleButton at={witness} walk={walk} />
          </li>
        ))}
      </ul>
    </section>
  );
}
