import { stepName } from '../../logic/logic.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Condition, Rule } from '../../protocol/protocol.ts';
import { stands, type Atoms } from './atoms.ts';
import { standIn, type Node } from './node.ts';

/**
 * What is left of a condition in a node once its settled comparisons are put in: `holds`, `fails`, or a text that is the same for two
 * conditions only if they ask the same of the same open comparisons. Order means nothing.
 */
export function shapeOf(
  condition: Condition | null | undefined,
  member: Compiled,
  atoms: Atoms,
  node: Node,
): string {
  const inside = (each: Condition): string => shapeOf(each, member, atoms, node);
  if (!condition) return fails;
  switch (condition.kind) {
    case 'all':
      return all(condition.of.map(inside));
    case 'any':
      return any(condition.of.map(inside));
    case 'none':
      return none(any(condition.of.map(inside)));
    case 'at_least_of':
      return atLeast(condition.count, condition.of.map(inside));
    case 'rule': {
      const named = member.protocol.rules.find(({ name }) => name === condition.rule);
      return named ? metShape(named, member, atoms, node) : fails;
    }
    default: {
      const atom = atoms.of(condition, member);
      if (!atom) return `${member.protocol.name} ${stepName(condition.path)}`;
      const stand = standIn(node, atom);
      return stand === stands.holds
        ? holds
        : stand === stands.fails
          ? fails
          : `${atom.index}${stand === stands.lacks ? ' lacks' : ''}`;
    }
  }
}

/** When a rule is met. */
export const metShape = (rule: Rule, member: Compiled, atoms: Atoms, node: Node): string =>
  all([shapeOf(rule.when, member, atoms, node), none(shapeOf(rule.unless?.when, member, atoms, node))]);

const [holds, fails] = ['holds', 'fails'];

function all(parts: readonly string[]): string {
  const open = [...new Set(parts.filter((part) => part !== holds))];
  if (open.includes(fails)) return fails;
  return open.length === 0 ? holds : open.length === 1 ? (open[0] as string) : `all(${open.sort().join()})`;
}

function any(parts: readonly string[]): string {
  const open = [...new Set(parts.filter((part) => part !== fails))];
  if (open.includes(holds)) return holds;
  return open.length === 0 ? fails : open.length === 1 ? (open[0] as string) : `any(${open.sort().join()})`;
}

const none = (part: string): string => (part === holds ? fails : part === fails ? holds : `none(${part})`);

function atLeast(count: number, parts: readonly string[]): string {
  const open = parts.filter((part) => part !== holds && part !== fails);
  const asked = count - parts.filter((part) => part === holds).length;
  if (asked <= 0) return holds;
  if (asked > open.length) return fails;
  if (asked === 1) return any(open);
  return asked === open.length ? all(open) : `${asked} of(${open.sort().join()})`;
}
