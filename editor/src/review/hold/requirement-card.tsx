import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { sentence } from '../../common/sentence.ts';
import { CasesToCopy } from '../common/cases-to-copy.tsx';
import type { StatedRequirement } from './hold-here.ts';
import type { Proving } from './use-proofs.ts';

const verdicts = { proven: 'Proven', refuted: 'Refuted', not_settled: 'Not settled' } as const;

interface Props {
  readonly requirement: StatedRequirement;
  readonly proving: Proving;
}

/** One requirement: the harm, and how it stands. */
export function RequirementCard({ requirement, proving }: Props): ReactNode {
  const { name, title, because, controls } = requirement;
  const proof = proving.proofs.get(name);
  const isNow = proving.looking?.requirement === name;
  return (
    <li className="panel requirement" data-verdict={proof?.verdict ?? 'open'}>
      <header>
        <h3>{sentence(title)}</h3>
        <span className="verdict-mark" data-verdict={proof?.verdict ?? 'open'}>
          {proof ? verdicts[proof.verdict] : isNow ? 'Being asked' : 'Not asked yet'}
        </span>
      </header>
      {because !== null && <p>{because}</p>}
      {controls.map(({ harm, severity, owner }) => (
        <p key={harm} className="harm">
          <strong>So that this does not happen: </strong>
          {harm} <span className="hint">{`(${severity}; ${owner})`}</span>
        </p>
      ))}
      {proof && (
        <>
          {keyed(proof.says).map(({ key, line }) => (
            <p key={key}>{line}</p>
          ))}
          {proof.yaml !== null && (
            <CasesToCopy
              yaml={proof.yaml}
              says={
                proof.verdict === 'refuted'
                  ? 'The plainest example, as cases that say what is answered now'
                  : 'What may hide behind what is excepted, as cases'
              }
            />
          )}
        </>
      )}
    </li>
  );
}
