import { parse } from 'yaml';
import { judge, type Protocol } from '../oracle/oracle.ts';
import { compared, type Verdict } from './compare.ts';
import type { Example } from './generators.ts';
import { askKit } from './kit.ts';
import { ladderText, levels, type Plain } from './protocols.ts';
import { remembered } from './remembered.ts';

/** Each protocol is read once: reading takes longer than judging. */
const protocols = remembered((text) => parse(text) as Protocol);
/** The two questions about one example come soon after each other. */
const verdicts = remembered((key) => {
  const [text = '', set = ''] = JSON.parse(key) as string[];
  return judge(protocols(text), levels, JSON.parse(set));
}, 20_000);

/** What the judge says of a set. */
export const judged = ({ made }: Pick<Example, 'made'>, set: Plain): Verdict =>
  verdicts(JSON.stringify([made.text, JSON.stringify(set)]));

/** How the kit's answers to the sets of an example stand to the judge's verdicts. */
export function judgedApart(example: Example): {
  readonly wrong: readonly string[];
  readonly rules: number;
  readonly looser: number;
  readonly excused: readonly string[];
} {
  const { protocol, text } = example.made;
  let [rules, looser] = [0, 0];
  const excused: string[] = [];
  for (const set of example.sets) {
    const verdict = judged(example, set);
    const found = compared(protocol, levels, askKit(text, ladderText, JSON.stringify(set)), verdict);
    if (found.wrong.length)
      return { wrong: [...found.wrong, text, JSON.stringify(set)], rules, looser, excused };
    rules += Object.keys(verdict.rules).length;
    looser += found.looser;
    if (found.excused.length) excused.push(found.excused.join(', '));
  }
  return { wrong: [], rules, looser, excused };
}
