import type { Hazard } from '../protocol/requirements/requirement.ts';
import { ofTheRules, whyNotSettled } from '../review/requirements/proof-in-words.ts';
import type { Proof } from '../review/requirements/proof.ts';

/** What became of one requirement, as lines. */
export function proofLines(proof: Proof, hazards: ReadonlyMap<string, Hazard>): string {
  const { requirement } = proof;
  const harms = requirement.controls.map((name) => `    controls: ${hazards.get(name)?.harm ?? name}`);
  return [`  ${requirement.name}: ${requirement.title}`, ...harms, ...verdictLines(proof), '', ''].join('\n');
}

function verdictLines(proof: Proof): readonly string[] {
  switch (proof.verdict) {
    case 'proven':
      return [
        `    Proven. ${ofTheRules}`,
        ...proof.excepted.flatMap(({ observation, worst }) =>
          worst
            ? [
                `    Excepted: ${observation}. Left blank, it can hide: ${worst.says}`,
                ...indented(worst.yaml),
              ]
            : [`    Excepted: ${observation}. Left blank by itself, it hides nothing.`],
        ),
      ];
    case 'refuted':
      return [
        `    Refuted. ${proof.example.says} ${ofTheRules}`,
        '    The plainest example, as cases that say what is answered now:',
        ...indented(proof.example.yaml),
      ];
    case 'not_settled':
      return [`    Not settled. ${whyNotSettled(proof.because, proof.looked)} ${ofTheRules}`];
  }
}

const indented = (yaml: string): readonly string[] =>
  yaml
    .trimEnd()
    .split('\n')
    .map((line) => `    ${line}`);
