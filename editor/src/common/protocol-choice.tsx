import { useId, type ReactNode } from 'react';
import type { SiteProtocol } from './site-protocol.ts';

interface Props {
  /** What is done with the one that is chosen: `Read with`. */
  readonly label: string;
  readonly chosen: string;
  readonly protocols: readonly Pick<SiteProtocol, 'id' | 'title'>[];
  readonly onChoose: (id: string) => void;
}

/** At the head of every room: which protocol it is about. */
export function ProtocolChoice({ label, chosen, protocols, onChoose }: Props): ReactNode {
  const id = useId();
  return (
    <div className="head-field head-protocol">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={chosen} onChange={(event) => onChoose(event.target.value)}>
        {protocols.map((each) => (
          <option key={each.id} value={each.id}>
            {each.title}
          </option>
        ))}
      </select>
    </div>
  );
}
