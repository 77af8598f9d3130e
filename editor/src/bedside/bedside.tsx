import { useCallback, useMemo, useReducer, useState, type ReactNode } from 'react';
import { draftSaid, type Form, type SaidOfSource } from '../../../src/index.ts';
import { timeFor } from './time-for.ts';
import { withOffset } from '../common/clock.ts';
import { Fault } from '../common/fault-boundary.tsx';
import { keyed } from '../common/keyed.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';
import { readUnits, rememberUnit } from '../common/remembered-units.ts';
import { EarlierSets } from './earlier-sets.tsx';
import { givenToJson, heldBack } from './entries.ts';
import { EntryForm, type Entering } from './entry-form.tsx';
import { HandoffDialog } from './handoff-dialog.tsx';
import { IdleDialog } from './idle-dialog.tsx';
import { MakeCaseDialog } from './make-case-dialog.tsx';
import { OutcomeSide } from './outcome-side.tsx';
import { PatientPart } from './patient-part.tsx';
import { remarksFrom } from './remarks.ts';
import { PolicySaid } from './policy-said.tsx';
import { RoomHead } from './room-head.tsx';
import { changed, isBlank, newPatient } from './state.ts';
import { useForm } from './use-form.ts';
import { useIdle } from './use-idle.ts';
import { useIsBehind, useReading } from './use-reading.ts';

interface Props {
  readonly protocol: SiteProtocol;
  readonly protocols: readonly SiteProtocol[];
  readonly onChoose: (id: string) => void;
  /** Told of a set, as JSON, that a case is to be made of. */
  readonly onMakeCase: (set: string) => void;
}

/** The room of the clinician: enter a set, read what it means, hand it over. */
export function Bedside(props: Props): ReactNode {
  const opened = useForm(props.protocol, props.protocols);
  // A new patient is a new room, so that nothing of the last one is left in any field.
  const [patients, setPatients] = useState(0);
  const next = useCallback(() => setPatients((count) => count + 1), []);
  if (opened.state === 'failed') return <Fault />;
  if (opened.state === 'opening') return <p className="waiting">Opening the protocol…</p>;
  if (opened.state === 'problems') return <Unusable {...props} problems={opened.problems} />;
  return <Room key={patients} {...props} form={opened.form} onNewPatient={next} />;
}

function Unusable({
  protocol,
  protocols,
  onChoose,
  problems,
}: Props & { readonly problems: readonly string[] }): ReactNode {
  return (
    <main className="fault">
      <h1>{`“${protocol.title}” cannot be read with`}</h1>
      <p>A protocol with problems is never used for a patient. Use the paper policy until it is mended.</p>
      <ul className="plain">
        {keyed(problems).map(({ key, line }) => (
          <li key={key}>{line}</li>
        ))}
      </ul>
      <p>Others here:</p>
      {protocols
        .filter(({ id }) => id !== protocol.id)
        .map(({ id, title }) => (
          <button key={id} type="button" className="button" onClick={() => onChoose(id)}>
            {title}
          </button>
        ))}
    </main>
  );
}

interface RoomProps extends Props {
  readonly form: Form;
  readonly onNewPatient: () => void;
}

function Room({ protocol, protocols, form, onChoose, onMakeCase, onNewPatient }: RoomProps): ReactNode {
  const [patient, change] = useReducer(changed, newPatient);
  const [units, setUnits] = useState(readUnits);
  const [isTyping, setTyping] = useState(false);
  const [isHandingOver, setHandingOver] = useState(false);
  const [isMakingCase, setMakingCase] = useState(false);
  const [opened] = useState(() => withOffset(new Date()));
  const given = { ...patient, at: patient.takenAt ?? opened };
  const text = givenToJson(given, form.patient);
  const reading = useReading(text);
  const isBehind = useIsBehind(reading, text);
  const left = useIdle(isBlank(patient), onNewPatient);
  const fields = useMemo(() => [...form.needs, ...form.helps].flatMap((group) => group.fields), [form]);
  const held = heldBack(given, fields, form.patient, form.limits);
  const entering: Entering = {
    remarksOf: remarksFrom(reading),
    usualUnit: ({ units: offered }) => {
      const own = offered[0];
      return offered.find(({ word }) => word === units[own?.word ?? ''])?.ucum ?? own?.ucum ?? '';
    },
    onUnit: ({ units: offered }, ucum) => {
      const word = offered.find((each) => each.ucum === ucum)?.word ?? '';
      setUnits(rememberUnit(units, offered[0]?.word ?? '', word));
    },
    onTyping: setTyping,
  };
  const said = saidOf(protocol);
  const now = (): string => timeFor(patient.earlier);
  return (
    <>
      <RoomHead
        protocol={protocol}
        protocols={protocols}
        bed={patient.background.bed}
        takenAt={patient.takenAt}
        onChoose={onChoose}
        onBed={(bed) => change({ does: 'fill', background: { bed } })}
        onTakenAt={(at) => change({ does: 'take_at', at })}
        onNewPatient={onNewPatient}
      />
      <PolicySaid said={said} />
      <main className="room">
        <div className="entry-side">
          <EntryForm
            {...entering}
            form={form}
            entries={patient.entries}
            onEnter={(name, entry) => change({ does: 'enter', name, entry, now: now() })}
            patientPart={
              <PatientPart
                {...entering}
                form={form}
                facts={patient.facts}
                limits={patient.limits}
                onState={(what, name, stated) => change({ does: 'state', what, name, change: stated })}
              />
            }
          />
          <EarlierSets
            form={form}
            earlier={patient.earlier}
            takenAt={patient.takenAt}
            canKeep={patient.takenAt !== null && Object.keys(patient.entries).length > 0}
            onAdd={(sets) => change({ does: 'add_earlier', sets })}
            onDrop={(at) => change({ does: 'drop_earlier', at })}
            onNextSet={() => change({ does: 'next_set' })}
          />
        </div>
        <OutcomeSide
          reading={reading}
          held={held}
          isTyping={isTyping}
          isBehind={isBehind}
          isCurrent={reading.state !== 'read' || reading.text === text}
          isBlank={isBlank(patient)}
          hasTime={patient.takenAt !== null}
          bed={patient.background.bed}
          onHandOver={() => setHandingOver(true)}
          onMakeCase={() => setMakingCase(true)}
        />
      </main>
      {isHandingOver && reading.state === 'read' && (
        <HandoffDialog
          reading={reading.reading}
          background={patient.background}
          said={said}
          onFill={(background) => change({ does: 'fill', background })}
          onClose={() => setHandingOver(false)}
        />
      )}
      {isMakingCase && (
        <MakeCaseDialog
          hasEarlier={patient.earlier.length > 0}
          onMake={() => {
            setMakingCase(false);
            onMakeCase(text);
          }}
          onClose={() => setMakingCase(false)}
        />
      )}
      {left !== null && <IdleDialog seconds={left} onClear={onNewPatient} />}
    </>
  );
}

/** What is to be said of what the room reads with. */
const saidOf = ({ in_force: inForce }: SiteProtocol): SaidOfSource =>
  inForce?.kind === 'policy' ? inForce : draftSaid;
