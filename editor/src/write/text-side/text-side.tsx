import { useCallback, useState, type ReactNode } from 'react';
import type { OpenDesk } from '../desk/use-desk.ts';
import type { ProblemHere } from '../messages.ts';
import { fileOf, type Part } from '../parts.ts';
import { TextField, type FieldHandle, type TabKey } from '../text-field/text-field.tsx';
import { PartTabs } from './part-tabs.tsx';
import { PrintedText } from './printed-text.tsx';
import { ProblemList } from './problem-list.tsx';
import { useHandle } from './use-handle.ts';

interface Props {
  readonly open: OpenDesk;
  readonly kind: 'protocol' | 'ward';
  readonly part: Part;
  readonly onPart: (part: Part) => void;
  readonly onCaret: (line: number) => void;
  readonly onSave: () => void;
  readonly onHandle: (handle: FieldHandle | null) => void;
}

/** The side of the room where one writes: the two texts, and what is wrong in them. */
export function TextSide({ open, kind, part, onPart, onCaret, onSave, onHandle }: Props): ReactNode {
  const { desk, state, verdict, isFresh } = open;
  const [handle, setHandle] = useHandle(onHandle);
  const [tab, setTab] = useState<TabKey>('indents');
  const problems = verdict.checked?.problems ?? [];
  const isReadOnly = (each: Part): boolean => kind === 'ward' && each === 'protocol';
  const go = useCallback(
    (problem: ProblemHere): void => {
      onPart(problem.part);
      // The field shows the other text only once the page was drawn.
      setTimeout(() => handle.current?.show({ line: problem.line, column: problem.column, go: true }));
    },
    [handle, onPart],
  );
  return (
    <div className="text-side" id="text" tabIndex={-1}>
      <div className="text-frame">
        <PartTabs
          kind={kind}
          part={part}
          unsaved={state.unsaved}
          problemsIn={(each) => problems.filter((problem) => problem.part === each).length}
          onPart={onPart}
        />
        {isReadOnly(part) && (
          <p className="note">
            A ward policy can be read here and not changed: this room writes only protocol.yaml and
            cases.yaml. Its cases can be written.
          </p>
        )}
        <TextField
          model={desk.models[part]}
          label={`${fileOf(part, kind)}. ${tabInWords[tab]}`}
          readOnly={isReadOnly(part)}
          tab={tab}
          onTab={setTab}
          onCaret={onCaret}
          onSave={onSave}
          onReady={setHandle}
        />
        <p className="hint key-hint" role="status">
          {tabInWords[tab]}
        </p>
        <p className="hint key-hint">
          Ctrl+Space offers what may stand here, Ctrl+F finds, Ctrl+Z takes back, Ctrl+S saves.
        </p>
      </div>
      <PrintedText model={desk.models[part]} />
      <ProblemList
        problems={problems}
        kind={kind}
        isFresh={isFresh}
        canMend={(each) => isFresh && !isReadOnly(each)}
        onGo={go}
        onMend={(mend) => {
          desk.splice(mend.part, mend.splices);
          onPart(mend.part);
        }}
      />
    </div>
  );
}

const tabInWords: Readonly<Record<TabKey, string>> = {
  indents: 'Tab indents. To leave the text by keyboard: Escape and then Tab, or Ctrl+M and then Tab.',
  leaves: 'Tab leaves the text. Ctrl+M lets it indent again.',
  leaves_once: 'The next Tab leaves the text.',
};
