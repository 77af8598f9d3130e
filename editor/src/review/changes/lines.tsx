import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { sentence } from '../../common/sentence.ts';

interface Props {
  readonly heading: string;
  readonly lines: readonly string[];
}

/** Sentences under a heading; nothing where there are none. */
export function Lines({ heading, lines }: Props): ReactNode {
  if (lines.length === 0) return null;
  return (
    <div className="lines">
      <h4>{heading}</h4>
      <ul className="plain">
        {keyed(lines).map(({ key, line }) => (
          <li key={key}>{sentence(line)}</li>
        ))}
      </ul>
    </div>
  );
}
