import { assumed } from './assume.ts';
import { narrowed, type Box } from './box.ts';
import type { Second } from './enter.ts';
import type { Program } from './program.ts';
import type { Question } from './question.ts';

/** The box in which a question begins, without values of single variables at which nothing that matters can be. */
export function startOf({ start, program, about, seconds }: Question): Box {
  let box = start;
  for (const [place, value] of assumed(program, about.first)) {
    const { leaf } = program.nodes[place] as Program['nodes'][number];
    if (!leaf?.table || leaf.blank || !isItself(seconds.get(leaf.variable))) continue;
    const { variable, table } = leaf;
    const base = program.domain(variable).low;
    const fits = (at: number): boolean => table[at - base] === value;
    let [low, high] = [box.low[variable] as number, box.high[variable] as number];
    while (low < high && !fits(low)) low += 1;
    while (low < high && !fits(high)) high -= 1;
    box = narrowed(box, variable, low, high);
  }
  return box;
}

/** Whether the variable is in the first set what the box says of it. */
const isItself = (second: Second | undefined): boolean => second?.kind !== 'only_here';
