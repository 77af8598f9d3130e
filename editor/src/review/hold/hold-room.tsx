import type { ReactNode } from 'react';
import type { Opening } from '../messages.ts';
import type { StatedRequirement } from './hold-here.ts';
import { RequirementCard } from './requirement-card.tsx';
import { useProofs, type Proving } from './use-proofs.ts';

interface Props {
  readonly opening: Opening;
  readonly requirements: readonly StatedRequirement[];
}

/** What must hold for every possible set: each requirement with the harm that it controls, and what was proven of it. */
export function HoldRoom({ opening, requirements }: Props): ReactNode {
  const proving = useProofs(opening);
  if (requirements.length === 0) return <NoneStated />;
  const asked = proving.state !== 'not_asked';
  return (
    <div className="hold-room">
      <section className="panel hold-head">
        <h2>What must hold for every possible set</h2>
        <p role="status">{`${inWords(requirements, proving)} What is proven is true of the rules as written, not of patients.`}</p>
        <div className="hold-buttons">
          {proving.state === 'running' ? (
            <button type="button" className="button" onClick={proving.cancel}>
              Cancel
            </button>
          ) : (
            <button type="button" className="button button-strong" onClick={proving.prove}>
              {asked
                ? 'Prove again'
                : `Prove ${requirements.length === 1 ? 'it' : `all ${requirements.length}`}`}
            </button>
          )}
        </div>
        <Progress proving={proving} requirements={requirements} />
      </section>
      <ol className="requirements">
        {requirements.map((each) => (
          <RequirementCard key={each.name} requirement={each} proving={proving} />
        ))}
      </ol>
    </div>
  );
}

function NoneStated(): ReactNode {
  return (
    <section className="panel empty">
      <h2>Nothing that must always hold is stated</h2>
      <p>
        A requirement is a sentence that must hold for every possible set, not only for the cases. It stands
        under must_always, beside the harm that it keeps from happening; write one in the Write room.
      </p>
    </section>
  );
}

function inWords(requirements: readonly StatedRequirement[], { proofs, state }: Proving): string {
  if (state === 'not_asked') return `${requirements.length} stated, none asked yet.`;
  const count = (verdict: string): number =>
    [...proofs.values()].filter((each) => each.verdict === verdict).length;
  const open = requirements.length - proofs.size;
  const words = [
    `${count('proven')} proven`,
    `${count('refuted')} refuted`,
    `${count('not_settled')} not settled`,
    ...(open > 0 ? [`${open} not asked yet`] : []),
  ];
  const over = {
    running: '',
    done: '',
    cancelled: 'Cancelled: ',
    failed: 'The kit itself failed; what is not told here is not known. ',
  };
  return `${over[state]}${words.join(', ')}.`;
}

interface ProgressProps {
  readonly proving: Proving;
  readonly requirements: readonly StatedRequirement[];
}

function Progress({ proving: { state, looking, proofs }, requirements }: ProgressProps): ReactNode {
  if (state !== 'running') return null;
  const title = requirements.find(({ name }) => name === looking?.requirement)?.title;
  return (
    <div className="hold-progress">
      <progress aria-label="Requirements answered" value={proofs.size} max={requirements.length} />
      <p>
        {looking
          ? `${title ?? looking.requirement}: looked into ${looking.looked.toLocaleString('en')} of at most ${looking.most.toLocaleString('en')} groups of sets.`
          : 'Reading the rules…'}
      </p>
    </div>
  );
}
