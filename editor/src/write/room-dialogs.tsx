import type { ReactNode } from 'react';
import type { RoomProps } from '../common/room.ts';
import type { OpenDesk } from './desk/use-desk.ts';
import { fileOf } from './parts.ts';
import { ConflictDialog } from './saving/conflict-dialog.tsx';
import { LeaveDialog } from './saving/leave-dialog.tsx';
import type { Leaving } from './saving/use-leaving.ts';
import type { Saving } from './saving/use-saving.ts';
import { NewCaseDialog, type CaseStart } from './side/new-case/new-case-dialog.tsx';
import { NewDialog } from './start/new-dialog.tsx';

interface Props extends RoomProps {
  readonly open: OpenDesk;
  readonly saving: Saving;
  readonly leaving: Leaving;
  readonly isStarting: boolean;
  readonly onStarted: () => void;
  readonly newCase: CaseStart | null;
  readonly onAddCase: (yaml: string) => void;
  readonly onNoCase: () => void;
}

/** What the room asks before it goes on. */
export function RoomDialogs(props: Props): ReactNode {
  const { open, saving, leaving, site, protocol, isStarting, onStarted, newCase, onGo } = props;
  const { desk, state } = open;
  const { conflict } = saving;
  const leaveFor = (leave: () => void): void => {
    desk.keep();
    leave();
  };
  const saveAndLeave = async (leave: () => void): Promise<void> => {
    if (await saving.saveAll()) leaveFor(leave);
    else leaving.stay();
  };
  return (
    <>
      {conflict && (
        <ConflictDialog
          file={fileOf(conflict.part, protocol.kind)}
          mine={desk.text(conflict.part)}
          theirs={conflict.theirs}
          onKeepMine={() => void saving.keepMine()}
          onTakeTheirs={saving.takeTheirs}
          onGoOn={saving.goOn}
        />
      )}
      {leaving.leave && !conflict && (
        <LeaveDialog
          files={state.unsaved.map((part) => fileOf(part, protocol.kind)).join(' and ')}
          saves={site.saves}
          keepsDraft={state.keepsDraft}
          onSave={() => leaving.leave && void saveAndLeave(leaving.leave)}
          onLeave={() => leaving.leave && leaveFor(leaving.leave)}
          onStay={leaving.stay}
        />
      )}
      {newCase && <NewCaseDialog start={newCase} onAdd={props.onAddCase} onClose={props.onNoCase} />}
      {isStarting && (
        <NewDialog
          site={site}
          onMade={(id) => {
            onStarted();
            onGo({ protocol: id, case: null, axes: null });
          }}
          onClose={onStarted}
        />
      )}
    </>
  );
}
