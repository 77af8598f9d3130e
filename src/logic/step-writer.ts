import { absolute, type Node } from './linear.ts';
import { operation, variable, type Logical } from './operators.ts';
import type { Step } from './logic.ts';

/** The largest whole number that every target reckons exactly. */
const largestExact = 9007199254740991n;

/** Writes the steps of one logic, each name once, and keeps count of what grows too large. */
export interface StepWriter {
  readonly steps: readonly Step[];
  /** Parts whose numbers could pass the largest exact one, each named once, by what first grew. */
  readonly tooLarge: ReadonlySet<string>;
  /** An expression as a step, by its name; what is a number, a truth or a variable already stays as it is. */
  define(name: string, is: Logical): Logical;
  /** A node with a name of its own, held to what is exact. `owner` is told of when it passes that, unless one that it is made `from` already did. */
  node(made: Node, owner: string, from: readonly Node[]): Node;
  /** Notes that a number on the way can come to this. */
  reach(value: bigint, owner: string, from: readonly Node[]): void;
}

export function stepWriter(): StepWriter {
  const steps: Step[] = [];
  const names = new Set<string>();
  const nodeNames = new Set<string>();
  const tooLarge = new Set<string>();
  // A node that was cut down once has been told of; what is built on it is not told of again.
  const cut = new WeakSet<Node>();

  function define(name: string, is: Logical): Logical {
    if (!operation(is)) return is;
    const free = freeName(name, names);
    steps.push({ name: free, is });
    return variable(free);
  }

  function node({ name, low, high, least, most }: Node, owner: string, from: readonly Node[]): Node {
    const far = absolute(least) > absolute(most) ? absolute(least) : absolute(most);
    const held = (value: bigint): bigint =>
      value > largestExact ? largestExact : value < -largestExact ? -largestExact : value;
    const made = { name: freeName(name, nodeNames), low, high, least: held(least), most: held(most) };
    const onCut = from.some((each) => cut.has(each));
    if (far > largestExact && !onCut) tooLarge.add(owner);
    if (far > largestExact || onCut) cut.add(made);
    return made;
  }

  function reach(value: bigint, owner: string, from: readonly Node[]): void {
    if (absolute(value) > largestExact && !from.some((each) => cut.has(each))) tooLarge.add(owner);
  }

  return { steps, tooLarge, define, node, reach };
}

/** The name, or the name with a number where it is taken; taken from now on. */
function freeName(name: string, taken: Set<string>): string {
  let free = name;
  for (let index = 2; taken.has(free); index += 1) free = `${name}#${index}`;
  taken.add(free);
  return free;
}
