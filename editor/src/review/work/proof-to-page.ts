import { ofTheRules, requirementKey, whyNotSettled, type Proof } from '../../../../src/index.ts';
import type { ProofHere } from '../hold/hold-here.ts';

/** What became of a requirement, as sentences and with the cases that show it. */
export function proofToPage(proof: Proof): ProofHere {
  const { verdict, looked, requirement } = proof;
  return { requirement: requirementKey(requirement), verdict, looked, ...shownBy(proof) };
}

function shownBy(proof: Proof): Pick<ProofHere, 'says' | 'yaml'> {
  switch (proof.verdict) {
    case 'proven': {
      const worst = proof.excepted.map(({ worst: each }) => each?.yaml ?? '').join('');
      return {
        says: [ofTheRules, ...proof.excepted.map(exceptedInWords)],
        yaml: worst === '' ? null : worst,
      };
    }
    case 'refuted':
      return { says: [proof.example.says, ofTheRules], yaml: proof.example.yaml };
    case 'not_settled':
      return { says: [whyNotSettled(proof.because, proof.looked), ofTheRules], yaml: null };
  }
}

type Excepted = Extract<Proof, { verdict: 'proven' }>['excepted'][number];

const exceptedInWords = ({ observation, worst }: Excepted): string =>
  worst
    ? `Excepted: ${observation}. Left blank, it can hide: ${worst.says}`
    : `Excepted: ${observation}. Left blank by itself, it hides nothing.`;
