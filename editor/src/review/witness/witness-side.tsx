import { useEffect, useRef, type ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { sentence } from '../../common/sentence.ts';
import type { Helper } from '../ask.ts';
import type { Walk } from '../changes/example-button.tsx';
import type { ChangesHere } from '../changes/changes-here.ts';
import { useWitness } from './use-witness.ts';
import type { SideSays, WitnessHere } from './witness-here.ts';

interface Props {
  readonly helper: Helper;
  readonly witnesses: ChangesHere['witnesses'];
  readonly walk: Walk;
  /** Counts up each time that a change asks for its example: whoever did goes there. */
  readonly asked: number;
}

/** The examples of a comparison, one after the other: one invented set, and what either side says of it. */
export function WitnessSide({ helper, witnesses, walk, asked }: Props): ReactNode {
  const found = useWitness(helper, walk.at);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (asked > 0) heading.current?.focus();
  }, [asked]);
  return (
    <section className="panel witness" aria-label="An example">
      <header>
        <h2 ref={heading} tabIndex={-1}>{`Example ${walk.at + 1} of ${walk.of}`}</h2>
        <p>{witnesses[walk.at]?.of}</p>
      </header>
      <div className="witness-steps">
        <button
          type="button"
          className="button"
          disabled={walk.at === 0}
          onClick={() => walk.onWalk(walk.at - 1)}
        >
          Previous
        </button>
        <button
          type="button"
          className="button"
          disabled={walk.at + 1 >= walk.of}
          onClick={() => walk.onWalk(walk.at + 1)}
        >
          Next
        </button>
      </div>
      <div aria-live="polite">
        {found === 'reading' && <p className="hint">Asking both sides…</p>}
        {found === 'failed' && <p>One of the sides cannot be asked this set.</p>}
        {typeof found === 'object' && <Shown witness={found} />}
      </div>
    </section>
  );
}

function Shown({
  witness: { observed, before, after, confirmed },
}: {
  readonly witness: WitnessHere;
}): ReactNode {
  return (
    <>
      <div className="witness-two">
        <Says label="Before" says={before} other={after} />
        <Says label="After" says={after} other={before} />
      </div>
      <table className="witness-set">
        <caption>One such set, invented</caption>
        <tbody>
          {observed.map(({ title, words }) => (
            <tr key={title}>
              <th scope="row">{sentence(title)}</th>
              <td>{words}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {!confirmed && (
        <p className="not-whole">
          Asked of this one set alone, the two sides do not differ as told: it needs earlier sets, or a value
          that one set does not hold.
        </p>
      )}
    </>
  );
}

interface SaysProps {
  readonly label: string;
  readonly says: SideSays;
  readonly other: SideSays;
}

/** What one side says; what the other does not say stands out, also without colour. */
function Says({ label, says, other }: SaysProps): ReactNode {
  const own = (title: string): boolean => other.why.every((each) => each.title !== title);
  return (
    <section className="witness-says" aria-label={label}>
      <h3>{label}</h3>
      <p className="witness-level">{says.level}</p>
      {says.couldBe !== null && <p>{says.couldBe}</p>}
      {says.tell.length > 0 && (
        <p>{`Tell: ${says.tell.join('; ')}${says.byWhen === null ? '' : ` (${says.byWhen})`}`}</p>
      )}
      <h4>Why</h4>
      {says.why.length === 0 && <p>No rule is met.</p>}
      <ul className="witness-why">
        {says.why.map(({ title, decidedBy }) => (
          <li key={title} className={own(title) ? 'only-here' : undefined}>
            <strong>{title}</strong>
            {own(title) && <span className="only-mark">{`only ${label.toLowerCase()}`}</span>}
            {keyed(decidedBy).map(({ key, line }) => (
              <span key={key} className="hint witness-because">
                {sentence(line)}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}
