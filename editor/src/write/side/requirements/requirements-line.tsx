import type { ReactNode } from 'react';
import type { OpenDesk } from '../../desk/use-desk.ts';
import type { RequirementHere } from '../../messages.ts';
import { useRequirements } from './use-requirements.ts';

/** What must always hold, as the texts stand now: how much of it is proven, and what is not. Nothing where nothing is stated. */
export function RequirementsLine({ open }: { readonly open: OpenDesk }): ReactNode {
  const { answers, isCurrent } = useRequirements(open);
  if (answers.length === 0) return null;
  const bad = answers.filter(({ verdict }) => verdict !== 'proven');
  return (
    <section className="requirements" aria-label="What must always hold" aria-busy={!isCurrent}>
      <p className="hint" role="status">
        {isCurrent ? inWords(answers) : 'What must always hold is asked again once the text rests.'}
      </p>
      {isCurrent && bad.length > 0 && (
        <ul>
          {bad.map((each) => (
            <li key={each.name}>{badInWords(each)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

const ofTheRules = 'True of the rules as written, not of patients.';

function inWords(answers: readonly RequirementHere[]): string {
  const proven = answers.filter(({ verdict }) => verdict === 'proven').length;
  const count = proven === answers.length ? `All ${proven}` : `${proven} of ${answers.length}`;
  return `What must always hold: ${count} proven. ${ofTheRules}`;
}

const badInWords = ({ title, verdict, says }: RequirementHere): string =>
  verdict === 'refuted'
    ? `Refuted: ${title}. ${says ?? ''}`
    : `Not settled while you write: ${title}. npx vitalwright prove looks longer.`;
