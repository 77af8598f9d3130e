import { visible } from '../problems/visible.ts';
import type { Terminal } from './terminal.ts';

/** A terminal on which problems are plain: nothing in them is obeyed or hidden. The time is asked of the other one anew each time. */
export function plainTerminal(given: Terminal): Terminal {
  return {
    out: (text) => given.out(text),
    err: (text) => given.err(onItsLines(text)),
    stdin: async () => given.stdin(),
    width: given.width,
    colour: given.colour,
    // A copy would stand still, and the rooms with it: they are served for days.
    get today() {
      return given.today;
    },
    get now() {
      return given.now;
    },
    seenFolder: given.seenFolder,
  };
}

/** Line ends and tabs stay, nothing else that a terminal would obey. */
const onItsLines = (text: string): string =>
  text
    .split(/([\n\t])/)
    .map((part) => (/^[\n\t]$/.test(part) ? part : visible(part)))
    .join('');
