import { judge } from '../oracle/oracle.ts';
import { compared, type Verdict } from './compare.ts';
import type { Example } from './generators.ts';
import { askKit } from './kit.ts';
import { ladderText, levels, type Plain } from './protocols.ts';

const verdicts = new Map<string, Verdict>();
/** The two questions about one example come soon after each other in a short run; a long one must not remember them all. */
const mostRemembered = 20_000;

/** What the judge says of a set. */
export function judged({ made }: Example, set: Plain): Verdict {
  const key = `${made.text}${JSON.stringify(set)}`;
  const known = verdicts.get(key);
  if (known) return known;
  const verdict = judge(made.text, levels, set);
  if (verdicts.size >= mostRemembered) verdicts.clear();
  verdicts.set(key, verdict);
  return verdict;
}

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
