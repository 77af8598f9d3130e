import type { Path } from '../problems/place.ts';
import type { ListNode, Node } from '../document/document.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import type { ObservationEntry } from '../protocol/protocol.ts';
import type { ObservedChoice, ObservedSeveral } from './series.ts';
import { nameOfNode, scalarOf, shortened, type SetReading } from './set-reading.ts';

/**
 * Reads the value of an observation that is no number. Null when it is none of its values; the report has the
 * reason.
 */
export function readChoice(
  node: Node,
  of: ObservationEntry,
  path: Path,
  reading: SetReading,
): ObservedChoice | ObservedSeveral | null {
  if (of.kind === 'several') {
    if (node.kind === 'list') return readSeveral(node, of, path, reading);
    return wrongKind(node, of, path, reading);
  }
  const choice = of.kind === 'yes_no' ? yesOrNo(scalarOf(node)) : scalarOf(node);
  if (typeof choice !== 'string') return wrongKind(node, of, path, reading);
  if (!isChoice(choice, of, path, reading)) return null;
  return { kind: 'choice', choice, given: { text: choice, moved: false } };
}

/** `yes` and `no` in either way of writing. */
export function yesOrNo(value: unknown): unknown {
  if (value === true) return 'yes';
  return value === false ? 'no' : value;
}

function readSeveral(
  list: ListNode,
  of: ObservationEntry,
  path: Path,
  reading: SetReading,
): ObservedSeveral | null {
  const choices = new Set<string>();
  let whole = true;
  list.items.forEach((item, index) => {
    const at = [...path, index];
    const choice = scalarOf(item);
    if (typeof choice !== 'string') whole = wrongKind(item, of, at, reading) !== null;
    else if (!isChoice(choice, of, at, reading)) whole = false;
    else if (choices.has(choice)) {
      reading.report('set_choice_twice', at, { name: of.name, choice });
      whole = false;
    } else choices.add(choice);
  });
  if (!whole) return null;
  const text = choices.size === 0 ? 'none' : [...choices].join(', ');
  return { kind: 'several', choices: [...choices], given: { text, moved: false } };
}

function isChoice(choice: string, of: ObservationEntry, path: Path, reading: SetReading): boolean {
  if (of.choices.some((each) => each.choice === choice)) return true;
  const choices = of.choices.map((each) => each.choice);
  const candidates = of.choices.map((each) => ({ name: each.choice, alsoCalled: [each.title] }));
  const near = nearMiss(choice, candidates);
  reading.report(
    'set_unknown_choice',
    path,
    { name: of.name, choice: shortened(choice), choices },
    { nearMiss: near },
  );
  return false;
}

const wantedKinds = { choice: 'one of ', several: 'a list with any of ', yes_no: 'one of ' } as const;

function wrongKind(node: Node, of: ObservationEntry, path: Path, reading: SetReading): null {
  const choices = of.choices.map((each) => each.choice).join(', ');
  const kind = `${of.kind === 'number' ? '' : wantedKinds[of.kind]}${choices}`;
  reading.report('set_wrong_kind', path, { name: of.name, written: nameOfNode(node), kind });
  return null;
}
