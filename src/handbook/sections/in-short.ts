import type { Sentence } from '../sentences/sentence.ts';
import type { Speaker } from '../sentences/speaker.ts';

/** One sentence in one line: what stands below it in brackets. */
function inOneLine({ text, of }: Sentence): string {
  if (of.length === 0) return text;
  return `${text.replace(/:$/, '')} (${of.map(inOneLine).join('; ')})`;
}

const label = String.raw`(“[^“”]*”(?: \[\w+\])?|\[\w+\])`;
const limits = new RegExp(String.raw`the limit ${label} \(([^()]*)\)`, 'g');
const rules = new RegExp(`the rule ${label} is met`, 'g');

/**
 * A sentence for a paper sheet, on which every letter counts: of a limit the number alone, with a star where it may be changed for one
 * patient; of a rule its title. It is for reading, and is not read back.
 */
export const inShort = (sentence: Sentence, { protocol, things }: Speaker): string =>
  inOneLine(sentence)
    .replace(/\)$/, ').')
    .replaceAll(limits, (_, name: string, number: string) => {
      const limit = protocol.limits.get(things.nameOf(name) ?? '');
      return limit?.between ? `${number}*` : number;
    })
    .replaceAll(rules, '$1');
