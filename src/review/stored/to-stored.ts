import type { Findings } from '../findings/find-findings.ts';
import { headings, scope } from '../findings/wording.ts';
import type { UnguardedChange } from '../guards/look-for-unguarded.ts';
import { ofTheRules, whyNotSettled } from '../requirements/proof-in-words.ts';
import type { Proof } from '../requirements/proof.ts';
import type { StoredPart } from './stored-results.ts';

/** A part of which there is nothing to tell but why. */
export const partWithout = (title: string, says: string): StoredPart => ({ title, says, lines: [] });

export const titles = {
  comparison: 'Compared with what is in force',
  requirements: 'What must always hold',
  findings: 'What the rules do together',
  unguarded: 'Small changes that no case notices',
} as const;

/** What became of each safety requirement. */
export function proofsToStored(proofs: readonly Proof[]): StoredPart {
  const proven = proofs.filter(({ verdict }) => verdict === 'proven').length;
  if (proofs.length === 0)
    return partWithout(titles.requirements, 'It states nothing that must always hold.');
  return {
    title: titles.requirements,
    says: `${proven} of ${proofs.length} are proven. ${ofTheRules}`,
    lines: proofs.map((proof) => ({
      says: `${proof.requirement.title}: ${verdictOf(proof)}`,
      line: null,
      more: moreOf(proof),
    })),
  };
}

const verdictOf = ({ verdict }: Proof): string =>
  ({ proven: 'proven', refuted: 'refuted', not_settled: 'not settled' })[verdict];

function moreOf(proof: Proof): readonly string[] {
  switch (proof.verdict) {
    case 'proven':
      return proof.excepted.map(({ observation, worst }) =>
        worst
          ? `Excepted: ${observation}. Left blank, it can hide: ${worst.says}`
          : `Excepted: ${observation}. Left blank by itself, it hides nothing.`,
      );
    case 'refuted':
      return [proof.example.says];
    case 'not_settled':
      return [whyNotSettled(proof.because, proof.looked)];
  }
}

/** What was found about the rules together, each at its line. */
export function findingsToStored({ findings, open }: Findings): StoredPart {
  const unanswered = findings.filter(({ needsAnswer, accepted }) => needsAnswer && accepted === null);
  return {
    title: titles.findings,
    says: `${findings.length} found, ${unanswered.length} of them to be answered; ${open.length} not settled. ${scope}`,
    lines: [
      ...findings.map(({ kind, sentence, line, witnesses, accepted, needsAnswer }) => ({
        says: `${headings[kind]}: ${sentence}`,
        line,
        more: [
          ...witnesses.map(({ words }) => `With ${words}`),
          ...(accepted === null ? (needsAnswer ? ['To be answered.'] : []) : [`Accepted: ${accepted}`]),
        ],
      })),
      ...open.map(({ kind, sentence, line }) => ({
        says: `${headings[kind]}, not settled: ${sentence}`,
        line,
        more: [],
      })),
    ],
  };
}

/** The small changes that no case notices, out of so many that were made. */
export function unguardedToStored(of: number, changes: readonly UnguardedChange[]): StoredPart {
  const open = changes.filter(({ accepted }) => accepted === null).length;
  if (changes.length === 0)
    return partWithout(
      titles.unguarded,
      `Each of the ${of} small changes is noticed by a case, or refused by the check.`,
    );
  return {
    title: titles.unguarded,
    says: `Of ${of} small changes, ${changes.length} are noticed by no case; for ${open} of these no reason is given.`,
    lines: changes.map(({ name, line, accepted, because }) => ({
      says: name,
      line,
      more: [...(accepted === null ? [] : [`Accepted: ${accepted}`]), ...(because === null ? [] : [because])],
    })),
  };
}
