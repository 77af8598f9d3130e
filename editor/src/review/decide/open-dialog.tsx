import { useState, type ReactNode } from 'react';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { ApproveDialog } from './approve-dialog.tsx';
import { PutDialog } from './put-dialog.tsx';
import { SealDialog } from './seal-dialog.tsx';
import type { Typing } from './use-decision.ts';
import { WithdrawDialog } from './withdraw-dialog.tsx';

export type DialogName = 'seal' | 'approve' | 'put_in_force' | 'withdraw';

interface Props {
  readonly opened: DialogName | null;
  readonly protocol: SiteProtocol;
  readonly onDone: (says: string) => void;
  readonly onRefused: () => void;
  readonly onClose: () => void;
}

/** The dialog that is open. What was typed into one stays here until it is entered, also when the dialog is closed in between. */
export function OpenDialog({ opened, protocol, onDone, onRefused, onClose }: Props): ReactNode {
  const [typed, setTyped] = useState<Partial<Record<DialogName, Typing['typed']>>>({});
  if (opened === null) return null;
  const own = typed[opened] ?? {};
  const onType: Typing['onType'] = (change) =>
    setTyped((all) => ({ ...all, [opened]: { ...all[opened], ...change } }));
  const done = (says: string): void => {
    setTyped((all) => ({ ...all, [opened]: {} }));
    onDone(says);
  };
  const typing = { typed: own, onType, onClose };
  if (opened === 'seal') return <SealDialog protocol={protocol} onSealed={done} {...typing} />;
  const { record } = protocol;
  if (!record?.approvers) return null;
  const given = { protocol, record, approvers: record.approvers, onEntered: done, onRefused, ...typing };
  switch (opened) {
    case 'approve':
      return <ApproveDialog {...given} />;
    case 'put_in_force':
      return <PutDialog {...given} />;
    case 'withdraw':
      return <WithdrawDialog {...given} />;
  }
}
