import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';

interface Props {
  /** What the button opens. */
  readonly does: string;
  /** Why it cannot be done now; null: it can. */
  readonly why: string | null;
  readonly onOpen: () => void;
  readonly as?: 'li' | 'p';
}

/** A button that opens a dialog; in its place, why there is none. */
export function Step({ does, why, onOpen, as: Tag = 'li' }: Props): ReactNode {
  return (
    <Tag className="decide-step">
      {why === null ? (
        <Button className="button" onPress={onOpen}>
          {does}
        </Button>
      ) : (
        <span className="decide-not">{`${does.replace('…', '')}: not now, ${why}.`}</span>
      )}
    </Tag>
  );
}
