import { withOwnLineEnds, type Splice } from '../../../../src/index.ts';
import { editor, Range, Uri } from '../text-field/monaco.ts';
import type { ProblemHere } from '../messages.ts';
import { parts, type Part, type Texts } from '../parts.ts';
import { dropDraft, keepDraft, type Draft } from './drafts.ts';

/** What is known of the desk at a moment; a new one after each change. */
export interface DeskState {
  /** Counts every change of either text. */
  readonly version: number;
  readonly unsaved: readonly Part[];
  /** Whether this browser keeps the draft; false must be told. */
  readonly keepsDraft: boolean;
}

const draftDelay = 250;

/** Where each text is written. */
const places = new WeakMap<editor.ITextModel, { readonly desk: Desk; readonly part: Part }>();

/** Which desk a text lies on; undefined for a text of somebody else. */
export const writtenIn = (
  model: editor.ITextModel,
): { readonly desk: Desk; readonly part: Part } | undefined => places.get(model);

/** The two texts of one protocol while they are written, with all that can be taken back. It outlasts the room: a look elsewhere loses nothing. */
export class Desk {
  readonly id: string;
  readonly models: Readonly<Record<Part, editor.ITextModel>>;
  /** What stands on disk, as far as is known; null where there is no file. */
  onDisk: Readonly<Record<Part, string | null>>;
  state: DeskState;
  /** Those of the texts as they stand; none while they are being checked. */
  problems: readonly ProblemHere[] = [];
  private readonly listeners = new Set<() => void>();
  private timer: ReturnType<typeof setTimeout> | null = null;

  constructor(id: string, onDisk: Readonly<Record<Part, string | null>>, draft: Draft | null) {
    this.id = id;
    this.onDisk = draft?.from ?? onDisk;
    const model = (part: Part): editor.ITextModel =>
      editor.createModel(
        draft?.texts[part] ?? onDisk[part] ?? '',
        'yaml',
        Uri.parse(`inmemory://write/${id}/${part}.yaml`),
      );
    this.models = { protocol: model('protocol'), cases: model('cases') };
    this.state = { version: 0, unsaved: this.unsavedNow(), keepsDraft: true };
    for (const part of parts) {
      places.set(this.models[part], { desk: this, part });
      this.models[part].onDidChangeContent(() => this.changed());
    }
  }

  /** As it stands in the field. */
  text(part: Part): string {
    return this.models[part].getValue(undefined, true);
  }

  /** As it is to stand on disk: each line that nobody touched ends as it did there. */
  toSave(part: Part): string {
    return withOwnLineEnds(this.text(part), this.onDisk[part] ?? '');
  }

  texts(): Texts {
    return { protocol: this.text('protocol'), cases: this.text('cases') };
  }

  /** Makes edits as one step that can be undone; every other character stays as it was. */
  splice(part: Part, splices: readonly Splice[]): void {
    const model = this.models[part];
    model.pushStackElement();
    model.pushEditOperations(
      [],
      splices.map(({ from, to, text }) => ({
        range: Range.fromPositions(model.getPositionAt(from), model.getPositionAt(to)),
        text,
        forceMoveMarkers: true,
      })),
      () => null,
    );
    model.pushStackElement();
  }

  /** Puts a whole other text in the place of one; what stood there can be had back by undo. */
  replace(part: Part, text: string): void {
    this.splice(part, [{ from: 0, to: this.models[part].getValueLength(), text }]);
  }

  /** What stands on disk is now known to be this. */
  saw(part: Part, text: string | null): void {
    this.onDisk = { ...this.onDisk, [part]: text };
    this.tell();
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Writes the draft at once; true unless the browser keeps nothing. */
  keep(): boolean {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    if (this.unsavedNow().length === 0) {
      dropDraft(this.id);
      return true;
    }
    return keepDraft(this.id, { texts: this.texts(), from: this.onDisk });
  }

  private unsavedNow(): Part[] {
    return parts.filter((part) => this.toSave(part) !== (this.onDisk[part] ?? ''));
  }

  private changed(): void {
    this.problems = [];
    this.state = { ...this.state, version: this.state.version + 1 };
    this.tell();
  }

  private tell(): void {
    this.state = { ...this.state, unsaved: this.unsavedNow() };
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      const keepsDraft = this.keep();
      if (keepsDraft === this.state.keepsDraft) return;
      this.state = { ...this.state, keepsDraft };
      for (const listener of this.listeners) listener();
    }, draftDelay);
    for (const listener of this.listeners) listener();
  }
}
