import type { Hazard } from '../protocol/requirements/requirement.ts';
import { ofTheRules, whyNotSettled } from '../review/requirements/proof-in-words.ts';
import type { Proof } from '../review/requirements/proof.ts';
import { wrap } from './wrap.ts';

/** What became of one requirement, as lines that fit the terminal; an example stays as it is to be pasted. */
export function proofLines(proof: Proof, hazards: ReadonlyMap<string, Hazard>, width: number): string {
  const { requirement } = proof;
  const say = (text: string): readonly string[] => wrap(text, width, '    ');
  const harms = requirement.controls.flatMap((name) => say(`controls: ${hazards.get(name)?.harm ?? name}`));
  const heading = wrap(`${requirement.name}: ${requirement.title}`, width, '  ');
  const from = requirement.from === null ? [] : say(`Stated by the ladder "${requirement.from}".`);
  return [...heading, ...from, ...harms, ...verdictLines(proof, say), '', ''].join('\n');
}

function verdictLines(proof: Proof, say: (text: string) => readonly string[]): readonly string[] {
  switch (proof.verdict) {
    case 'proven':
      return [
        ...say(`Proven. ${ofTheRules}`),
        ...proof.excepted.flatMap(({ observation, worst }) =>
          worst
            ? [
                ...say(`Excepted: ${observation}. Left blank, it can hide: ${worst.says}`),
                ...indented(worst.yaml),
              ]
            : say(`Excepted: ${observation}. Left blank by itself, it hides nothing.`),
        ),
      ];
    case 'refuted':
      return [
        ...say(`Refuted. ${proof.example.says} ${ofTheRules}`),
        ...say('The plainest example, as cases that say what is answered now:'),
        ...indented(proof.example.yaml),
      ];
    case 'not_settled':
      return say(`Not settled. ${whyNotSettled(proof.because, proof.looked)} ${ofTheRules}`);
  }
}

const indented = (yaml: string): readonly string[] =>
  yaml
    .trimEnd()
    .split('\n')
    .map((line) => `    ${line}`);
