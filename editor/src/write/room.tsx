import { useCallback, useEffect, useRef, useState, type ReactNode } from 'react';
import { download } from '../common/download.ts';
import { Fault } from '../common/fault-boundary.tsx';
import type { RoomProps } from '../common/room.ts';
import { ask } from './ask.ts';
import { useDesk } from './desk/use-desk.ts';
import { Head } from './head.tsx';
import type { RuleHere } from './messages.ts';
import { JumpLinks } from './jump-links.tsx';
import { fileOf, type Part } from './parts.ts';
import { RoomDialogs } from './room-dialogs.tsx';
import { useLeaving } from './saving/use-leaving.ts';
import { useSaving } from './saving/use-saving.ts';
import type { CaseStart } from './side/new-case/new-case-dialog.tsx';
import { Side } from './side/side.tsx';
import type { FieldHandle } from './text-field/text-field.tsx';
import { TextSide } from './text-side/text-side.tsx';

export function Room(props: RoomProps): ReactNode {
  const { address, protocol, site, onSaved, onGo, observed, onTaken } = props;
  const open = useDesk(protocol, site);
  const { desk, state } = open;
  const [part, setPart] = useState<Part>('protocol');
  const [caret, setCaret] = useState(1);
  const [isStarting, setStarting] = useState(false);
  const [newCase, setNewCase] = useState<CaseStart | null>(null);
  const [said, setSaid] = useState('');
  const handle = useRef<FieldHandle>(null);
  const onHandle = useCallback((next: FieldHandle | null) => {
    handle.current = next;
  }, []);
  const saving = useSaving(desk, protocol.kind, onSaved);
  const leaving = useLeaving(protocol.id, state.unsaved.length > 0, address);
  const save = (): void => {
    if (site.saves) void saving.saveAll();
    else download(fileOf(part, protocol.kind), desk.toSave(part), document);
  };
  const show = useCallback((to: Part, line: number) => {
    setPart(to);
    // The field has the other text only once the page was drawn.
    setTimeout(() => handle.current?.show({ line, column: 1, go: true }));
  }, []);
  const addCase = useCallback(
    async (yaml: string): Promise<void> => {
      const before = desk.text('cases');
      const { splices } = await ask<'add_case'>({
        kind: 'add_case',
        cases: before,
        name: protocol.id.split('/').at(-1) ?? protocol.id,
        yaml,
      });
      if (!splices || desk.text('cases') !== before) {
        setSaid('The case was not added: cases.yaml has a mistake that must be mended first.');
        return;
      }
      desk.splice('cases', splices);
      setSaid('The case was added at the end of cases.yaml.');
      show('cases', desk.models.cases.getLineCount());
    },
    [desk, protocol, show],
  );
  // A set from the bedside waits until the texts were read: a case is written against what they say.
  useEffect(() => {
    if (observed === null || open.verdict.checked === null) return;
    setNewCase({ from: 'bedside', observed });
    onTaken();
  }, [observed, onTaken, open.verdict.checked]);
  const go = useRef(onGo);
  useEffect(() => {
    go.current = onGo;
  });
  const choose = useCallback((name: string | null) => go.current({ case: name }), []);
  const setAxes = useCallback((axes: readonly [string, string]) => go.current({ axes }), []);
  if (open.verdict.failed) return <Fault />;
  return (
    <>
      <Head
        {...props}
        open={open}
        saving={saving}
        said={said}
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
        <Side
          open={open}
          kind={protocol.kind}
          ruleAtCaret={part === 'protocol' ? ruleAt(open.verdict.checked?.rules ?? [], caret) : null}
          chosen={address.case}
          onChoose={choose}
          onShow={show}
          onAddCase={(yaml) => void addCase(yaml)}
          onNewCase={() => setNewCase({ from: 'hand' })}
          axes={address.axes}
          onAxes={setAxes}
          onCaseOf={(given) => setNewCase({ from: 'map', given })}
        />
      </main>
      <JumpLinks />
      <RoomDialogs
        {...props}
        open={open}
        saving={saving}
        leaving={leaving}
        isStarting={isStarting}
        onStarted={() => setStarting(false)}
        newCase={newCase}
        onAddCase={(yaml) => {
          setNewCase(null);
          void addCase(yaml);
        }}
        onNoCase={() => setNewCase(null)}
      />
    </>
  );
}

const ruleAt = (rules: readonly RuleHere[], line: number): RuleHere | null =>
  rules.find(({ lines }) => lines !== null && lines.first <= line && line <= lines.last) ?? null;
