import { caution } from '../outcome/caution.ts';
import { ofTheRules } from '../review/requirements/proof-in-words.ts';
import type { Proof } from '../review/requirements/proof.ts';

/** What became of the requirements of one file. */
export interface Proven {
  readonly file: string;
  readonly name: string;
  readonly edition: number;
  readonly proofs: readonly Proof[];
}

/** What `prove --json` prints; `silent` are the names of what states nothing. */
export const proofsToJson = (all: readonly Proven[], silent: readonly string[]): object => ({
  holds: all.every(({ proofs }) => proofs.every(({ verdict }) => verdict === 'proven')),
  true_of: ofTheRules,
  files: all.map(({ file, name, edition, proofs }) => ({
    file,
    name,
    edition,
    requirements: proofs.map(proofToJson),
  })),
  nothing_stated: silent,
  caution,
});

function proofToJson(proof: Proof): object {
  const { name, from, title, controls } = proof.requirement;
  const stated = from === null ? {} : { stated_by_ladder: from };
  const head = {
    requirement: name,
    ...stated,
    title,
    controls,
    verdict: proof.verdict,
    looked_into: proof.looked,
  };
  switch (proof.verdict) {
    case 'proven':
      return { ...head, excepted: proof.excepted };
    case 'refuted':
      return { ...head, example: proof.example };
    case 'not_settled':
      return { ...head, because: proof.because };
  }
}
