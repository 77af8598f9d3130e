import type { ReactNode } from 'react';
import type { OpenDesk } from '../desk/use-desk.ts';
import type { Part } from '../parts.ts';

interface Props {
  readonly open: OpenDesk;
  readonly part: Part;
  readonly caret: number;
}

export function Side({ open, caret, part }: Props): ReactNode {
  const cases = open.verdict.checked?.cases ?? [];
  return (
    <div className="side">
      <p>{`${part} ${caret}`}</p>
      <ul>
        {cases.map(({ name, passes, why }) => (
          <li key={name}>
            {passes ? 'passes' : 'fails'} {name} {why.join('; ')}
          </li>
        ))}
      </ul>
    </div>
  );
}
