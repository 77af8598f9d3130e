import { useCallback, useState } from 'react';
import { digestOf, save } from '../../common/save.ts';
import type { Desk } from '../desk/desk.ts';
import { fileOf, parts, type Part } from '../parts.ts';

/** Somebody else has changed a file since it was opened here. */
export interface Conflict {
  readonly part: Part;
  /** What stands on disk now; null when the file is gone. */
  readonly theirs: string | null;
}

export interface Saving {
  /** What came of the last save, in words; empty before. */
  readonly said: string;
  readonly isSaving: boolean;
  readonly conflict: Conflict | null;
  /** Saves what has changed. True when all of it is saved. */
  readonly saveAll: () => Promise<boolean>;
  /** After a conflict: mine over theirs, knowingly. */
  readonly keepMine: () => Promise<void>;
  /** After a conflict: theirs in the text; mine can be had back by undo. */
  readonly takeTheirs: () => void;
  readonly goOn: () => void;
}

/** Saving what was written, if nobody else has changed it in the meantime. */
export function useSaving(desk: Desk, kind: 'protocol' | 'ward', onSaved: () => void): Saving {
  const [said, setSaid] = useState('');
  const [isSaving, setSaving] = useState(false);
  const [conflict, setConflict] = useState<Conflict | null>(null);
  const saveAll = useCallback(async (): Promise<boolean> => {
    setSaving(true);
    const saved: string[] = [];
    const done = await saveParts(desk, (part) => saved.push(fileOf(part, kind)));
    setSaving(false);
    const before = saved.length > 0 ? `Saved: ${saved.join(' and ')}. ` : '';
    if (done.kind === 'all') setSaid(saved.length > 0 ? before.trim() : 'There is nothing to save.');
    if (done.kind === 'refused') setSaid(`${before}Not saved: ${done.says}`);
    if (done.kind === 'conflict') {
      setSaid(`${before}Not saved: somebody else has changed ${fileOf(done.conflict.part, kind)} on disk.`);
      setConflict(done.conflict);
    }
    if (saved.length > 0) onSaved();
    return done.kind === 'all';
  }, [desk, kind, onSaved]);
  const keepMine = useCallback(async (): Promise<void> => {
    if (!conflict) return;
    desk.saw(conflict.part, conflict.theirs);
    setConflict(null);
    await saveAll();
  }, [conflict, desk, saveAll]);
  const takeTheirs = useCallback((): void => {
    if (!conflict) return;
    desk.replace(conflict.part, conflict.theirs ?? '');
    desk.saw(conflict.part, conflict.theirs);
    setConflict(null);
    setSaid('The text from the disk is now in the field. Ctrl+Z there brings yours back.');
  }, [conflict, desk]);
  const goOn = useCallback(() => setConflict(null), []);
  return { said, isSaving, conflict, saveAll, keepMine, takeTheirs, goOn };
}

type Done =
  | { readonly kind: 'all' }
  | { readonly kind: 'refused'; readonly says: string }
  | { readonly kind: 'conflict'; readonly conflict: Conflict };

/** One part after the other, the protocol first: a folder comes with it. */
async function saveParts(desk: Desk, tell: (part: Part) => void): Promise<Done> {
  for (const part of parts) {
    if (!desk.state.unsaved.includes(part)) continue;
    const text = desk.toSave(part);
    const before = desk.onDisk[part];
    const onDisk = before === null ? null : digestOf(before);
    const saved = await save({ id: desk.id, part, text, onDisk });
    if (saved.kind === 'refused') return saved;
    if (saved.kind === 'changed_on_disk') return { kind: 'conflict', conflict: { part, theirs: saved.text } };
    desk.saw(part, text);
    tell(part);
  }
  return { kind: 'all' };
}
