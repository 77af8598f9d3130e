import { useCallback, useRef, useState, type ReactNode } from 'react';
import { download } from '../common/download.ts';
import { Fault } from '../common/fault-boundary.tsx';
import type { RoomProps } from '../common/room.ts';
import { useDesk } from './desk/use-desk.ts';
import { Head } from './head.tsx';
import { fileOf, type Part } from './parts.ts';
import { RoomDialogs } from './room-dialogs.tsx';
import { useLeaving } from './saving/use-leaving.ts';
import { useSaving } from './saving/use-saving.ts';
import { Side } from './side/side.tsx';
import type { FieldHandle } from './text-field/text-field.tsx';
import { TextSide } from './text-side/text-side.tsx';

export function Room(props: RoomProps): ReactNode {
  const { address, protocol, site, onSaved } = props;
  const open = useDesk(protocol, site);
  const { desk, state } = open;
  const [part, setPart] = useState<Part>('protocol');
  const [caret, setCaret] = useState(1);
  const [isStarting, setStarting] = useState(false);
  const handle = useRef<FieldHandle>(null);
  const onHandle = useCallback((next: FieldHandle | null) => {
    handle.current = next;
  }, []);
  const saving = useSaving(desk, protocol.kind, onSaved);
  const leaving = useLeaving(protocol.id, state.unsaved.length > 0, address);
  const save = (): void => {
    if (site.saves) void saving.saveAll();
    else download(fileOf(part, protocol.kind), desk.text(part), document);
  };
  if (open.verdict.failed) return <Fault />;
  return (
    <>
      <Head
        {...props}
        open={open}
        saving={saving}
        part={part}
        onSave={save}
        onNew={() => setStarting(true)}
      />
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
      <RoomDialogs
        {...props}
        open={open}
        saving={saving}
        leaving={leaving}
        isStarting={isStarting}
        onStarted={() => setStarting(false)}
      />
    </>
  );
}
