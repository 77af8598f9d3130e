import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { sentence } from '../../common/sentence.ts';

interface Props {
  readonly heading: string;
  readonly lines: readonly string[];
  /** The level of the heading, one below that of the part that it stands in. */
  readonly as?: 'h3' | 'h4';
}

/** Sentences under a heading; nothing where there are none. */
export function Lines({ heading, lines, as: Heading = 'h4' }: Props): ReactNode {
  if (lines.length === 0) return null;
  return (
    <div className="lines">
      <Heading>{heading}</Heading>
      <ul className="plain">
        {keyed(lines).map(({ key, line }) => (
          <li key={key}>{sentence(line)}</li>
        ))}
      </ul>
    </div>
  );
}
