import { useEffect, useId, useRef, useState, type ReactNode } from 'react';
import type { Drill, DrillLine } from '../../../src/index.ts';
import { keyed } from '../common/keyed.ts';
import { sentence } from '../common/sentence.ts';
import { afterStep, seenOf, type Seen } from './seen.ts';

interface Props {
  readonly drill: Drill;
  readonly seen: Seen;
  /** The name of the case, once it is answered: then all of it is shown. */
  readonly name: string | null;
  /** With what is to be said of it. */
  readonly onSee: (seen: Seen, words: string) => void;
}

/** The patient: the story, what is known, earlier sets, and the present one as far as it has been shown. */
export function CaseSide({ drill, seen, name, onSee }: Props): ReactNode {
  const { story, patient, stated, earlier, at, askFirst } = drill;
  const isAnswered = name !== null;
  const steps = earlier.length + drill.parts.length;
  const now = seenOf(drill, isAnswered ? { ...seen, steps } : seen);
  // A new case stands in the place of what was pressed to come here.
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section className="panel case" aria-label="The patient">
      <h2 ref={heading} tabIndex={-1} className="case-name">
        {name ?? 'A patient'}
      </h2>
      {story !== null && <p className="story">{story}</p>}
      {patient.length > 0 && <Lines heading="Known before the set" lines={patient} />}
      {stated.length > 0 && (
        <ul className="plain">
          {keyed(stated).map(({ key, line }) => (
            <li key={key}>{sentence(line)}</li>
          ))}
        </ul>
      )}
      {earlier.slice(0, now.earlier).map((set) => (
        <Lines key={set.at} heading={`Set of ${set.at}`} lines={set.lines} />
      ))}
      {now.lines.length > 0 && <Lines heading={at === null ? 'The set' : `Set of ${at}`} lines={now.lines} />}
      {!isAnswered && <Unfold drill={drill} seen={seen} onSee={onSee} />}
      {!isAnswered && askFirst !== null && (
        <p className="ask-first">
          <strong>To think about:</strong> {askFirst}
        </p>
      )}
    </section>
  );
}

function Unfold({ drill, seen, onSee }: Omit<Props, 'name'>): ReactNode {
  const { next } = seenOf(drill, seen);
  return (
    <div className="unfold">
      {next ? (
        <button
          type="button"
          className="button button-strong"
          onClick={() => onSee(afterStep(drill, seen), next.words)}
        >
          {next.title}
        </button>
      ) : (
        <AllTaken />
      )}
      <AskForOne drill={drill} seen={seen} onSee={onSee} />
    </div>
  );
}

/** Stands in the place of the button, and takes its focus. */
function AllTaken(): ReactNode {
  const place = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (document.activeElement === document.body) place.current?.focus();
  }, []);
  return (
    <p ref={place} tabIndex={-1} className="hint">
      That is all that was taken. You can still ask for what you miss.
    </p>
  );
}

/** One more observation, out of turn. The list holds all that could be taken, so that it gives nothing away. */
function AskForOne({ drill, seen, onSee }: Omit<Props, 'name'>): ReactNode {
  const id = useId();
  const { left } = seenOf(drill, seen);
  const [chosen, setChosen] = useState('');
  const line = left.find(({ observation }) => observation === chosen);
  if (left.length === 0) return null;
  return (
    <div className="ask-one">
      <label htmlFor={id}>Ask for one more observation</label>
      <select id={id} value={line ? chosen : ''} onChange={(event) => setChosen(event.target.value)}>
        <option value="">Choose one</option>
        {left.map(({ observation, title }) => (
          <option key={observation} value={observation}>
            {sentence(title)}
          </option>
        ))}
      </select>
      <button
        type="button"
        className="button"
        onClick={() =>
          line
            ? onSee(
                { ...seen, asked: [...seen.asked, line.observation] },
                `${sentence(line.title)}: ${line.words}`,
              )
            : onSee(seen, 'Choose an observation first.')
        }
      >
        Ask
      </button>
    </div>
  );
}

function Lines({
  heading,
  lines,
}: {
  readonly heading: string;
  readonly lines: readonly DrillLine[];
}): ReactNode {
  return (
    <table className="set">
      <caption>{heading}</caption>
      <tbody>
        {lines.map(({ observation, title, words }) => (
          <tr key={observation}>
            <th scope="row">{sentence(title)}</th>
            <td>{words}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
