import type { Outcome, Teach } from '../shape/generated/types.ts';

export type OutputAndVessels = NonNullable<Teach['output_and_vessels']>;

/** What can be said of them, in plain words. */
export const outputAndVessels: Readonly<Record<OutputAndVessels, string>> = {
  output_falls_vessels_squeeze: 'Output is falling; the vessels squeeze',
  vessels_have_let_go: 'The vessels have let go',
  both_fail: 'Both: output is falling and the vessels have let go',
  neither: 'Neither',
  cannot_say: 'Nobody can say from this',
};

/** Words with which a rule speaks of what the heart puts out, or of how firmly the vessels hold. */
const speaksOfThem = /\b(?:outputs?|beats?|pump|vessels?|tone|dilated?|squeez\w*|tight)\b/i;

/** The protocol's own sentences about output and vessels, of the rules that are met. They are only found here, never written. */
export function ownSentences({ advice }: Pick<Outcome, 'advice'>): string[] {
  const sentences = advice.flatMap(({ says, because }) => [says, because]);
  return [...new Set(sentences.filter((each) => each !== undefined && speaksOfThem.test(each)))] as string[];
}
