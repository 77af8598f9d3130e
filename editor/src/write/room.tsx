import { useCallback, useRef, useState, type ReactNode } from 'react';
import { Fault } from '../common/fault-boundary.tsx';
import type { RoomProps } from '../common/room.ts';
import { useDesk } from './desk/use-desk.ts';
import { Head } from './head.tsx';
import type { Part } from './parts.ts';
import { Side } from './side/side.tsx';
import type { FieldHandle } from './text-field/text-field.tsx';
import { TextSide } from './text-side/text-side.tsx';

export function Room(props: RoomProps): ReactNode {
  const { protocol, protocols } = props;
  const open = useDesk(protocol, protocols);
  const [part, setPart] = useState<Part>('protocol');
  const [caret, setCaret] = useState(1);
  const handle = useRef<FieldHandle>(null);
  const onHandle = useCallback((next: FieldHandle | null) => {
    handle.current = next;
  }, []);
  const save = useCallback(() => undefined, []);
  if (open.verdict.failed) return <Fault />;
  return (
    <>
      <Head {...props} open={open} onSave={save} />
      <main className="write-room">
        <TextSide
          open={open}
          kind={protocol.kind}
          part={part}
          onPart={setPart}
          onCaret={setCaret}
          onSave={save}
          onHandle={onHandle}
        />
        <Side open={open} caret={caret} part={part} />
      </main>
    </>
  );
}
