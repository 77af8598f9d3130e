import { useEffect, useRef, type ReactNode } from 'react';
import { editor, KeyCode, KeyMod } from './monaco.ts';
import { fieldOptions } from './options.ts';
import { provideHelp } from './providers.ts';

/** A place in a text that something outside of the field asks to be shown. */
export interface Reveal {
  /** From 1, as the column. */
  readonly line: number;
  readonly column: number;
  /** Whether the caret is to go there and the field to be focused; else it is only brought into sight. */
  readonly go: boolean;
}

/** What the rest of the room can ask of the field. */
export interface FieldHandle {
  show(place: Reveal): void;
  focus(): void;
}

/** What the Tab key does: indents, leaves the field, or leaves it this one time. */
export type TabKey = 'indents' | 'leaves' | 'leaves_once';

interface Props {
  readonly model: editor.ITextModel;
  /** What a screen reader calls it. */
  readonly label: string;
  readonly readOnly: boolean;
  readonly tab: TabKey;
  readonly onTab: (tab: TabKey) => void;
  readonly onCaret: (line: number) => void;
  readonly onSave: () => void;
  readonly onReady: (handle: FieldHandle | null) => void;
}

/** The field for one text. The text, its history and its marks live in the model, so that they outlast the field. */
export function TextField({ model, label, readOnly, tab, onReady, ...more }: Props): ReactNode {
  const place = useRef<HTMLDivElement>(null);
  const field = useRef<editor.IStandaloneCodeEditor>(null);
  const tell = useRef({ ...more, tab });
  useEffect(() => {
    tell.current = { ...more, tab };
  });
  useEffect(() => {
    if (!place.current) return undefined;
    provideHelp();
    const made = editor.create(place.current, { ...fieldOptions, model: null });
    field.current = made;
    made.onDidChangeCursorPosition(({ position }) => tell.current.onCaret(position.lineNumber));
    made.addCommand(KeyMod.CtrlCmd | KeyCode.KeyS, () => tell.current.onSave());
    const { onTab } = tell.current;
    // On some systems Ctrl+M belongs to the system, so Escape is a way out that is always there.
    made.addCommand(KeyMod.CtrlCmd | KeyCode.KeyM, () =>
      onTab(tell.current.tab === 'leaves' ? 'indents' : 'leaves'),
    );
    made.addCommand(
      KeyCode.Escape,
      () => tell.current.tab === 'indents' && onTab('leaves_once'),
      '!suggestWidgetVisible && !findWidgetVisible && !editorHoverVisible',
    );
    made.onDidBlurEditorWidget(() => tell.current.tab === 'leaves_once' && onTab('indents'));
    onReady(handleOf(made));
    return () => {
      onReady(null);
      made.dispose();
    };
  }, [onReady]);
  useEffect(() => {
    field.current?.setModel(model);
    tell.current.onCaret(field.current?.getPosition()?.lineNumber ?? 1);
  }, [model]);
  useEffect(() => {
    field.current?.updateOptions({ readOnly, ariaLabel: label, tabFocusMode: tab !== 'indents' });
  }, [readOnly, label, tab]);
  return <div ref={place} className="text-field" />;
}

function handleOf(made: editor.IStandaloneCodeEditor): FieldHandle {
  return {
    show: ({ line, column, go }) => {
      made.revealLineInCenterIfOutsideViewport(line);
      if (!go) return;
      made.setPosition({ lineNumber: line, column });
      made.focus();
    },
    focus: () => made.focus(),
  };
}
