import { isMap, isScalar, isSeq, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import type { Span } from '../problems/place.ts';
import { checkValueCharacters } from './checks/characters.ts';
import { MapKeys } from './checks/keys.ts';
import { checkNumber } from './checks/number.ts';
import type { ListNode, MapEntry, MapNode, Node, ScalarNode } from './document.ts';
import { limits } from './limits.ts';
import type { TextFaults } from './text-faults.ts';

/** Turns the parser's tree into ours: exact spans, names as keys, plain values. What cannot stand becomes a fault. */
export class YamlTreeReader {
  private readonly text: string;
  private readonly faults: TextFaults;

  constructor(text: string, faults: TextFaults) {
    this.text = text;
    this.faults = faults;
  }

  /** A part of the tree. Where nothing is written, `at` is the place where it would stand. */
  node(node: unknown, at: number, depth: number): Node {
    if (isScalar(node)) return this.scalar(node);
    const isDeep = depth >= limits.depth;
    if (isMap(node) && !isDeep) return this.map(node, depth + 1);
    if (isSeq(node) && !isDeep) return this.list(node, depth + 1);
    const place = { start: at, end: at };
    if (isMap(node) || isSeq(node)) this.faults.add('too_deep', spanOf(node, place), { most: limits.depth });
    return { kind: 'scalar', span: spanOf(node, place), value: null };
  }

  private map(map: YAMLMap, depth: number): MapNode {
    const keys = new MapKeys(this.faults);
    const entries: MapEntry[] = [];
    let inside: Span | null = null;
    for (const pair of map.items) {
      const entry = this.entry(pair, depth);
      inside = around(around(inside, entry.keySpan), entry.value.span);
      const { key, keySpan, value } = entry;
      if (key !== null && keys.accept(key, keySpan)) entries.push({ key, keySpan, value });
    }
    return { kind: 'map', span: this.spanAround(map, inside, '{'), entries };
  }

  /** A key with its value; the key is null when it is no name. */
  private entry(pair: Pair, depth: number): { key: string | null; keySpan: Span; value: Node } {
    const before = spanOf(pair.value, { start: 0, end: 0 });
    const keySpan = spanOf(pair.key, before);
    const value = this.node(pair.value, keySpan.end, depth);
    return { key: this.key(pair.key, keySpan), keySpan, value };
  }

  private key(key: unknown, span: Span): string | null {
    const written = this.text.slice(span.start, span.end);
    if (!isScalar(key) || typeof key.value !== 'string') {
      this.faults.add('key_not_text', span, { written });
      return null;
    }
    if (key.type === 'PLAIN' && key.value === '<<') {
      this.faults.add('merge_key', span, {});
      return null;
    }
    if (key.type === 'QUOTE_DOUBLE') checkValueCharacters(key.value, span, this.faults);
    return key.value;
  }

  private list(list: YAMLSeq, depth: number): ListNode {
    let inside: Span | null = null;
    const items = list.items.map((item) => {
      const node = this.node(item, inside?.end ?? spanOf(list, { start: 0, end: 0 }).start + 1, depth);
      inside = around(inside, node.span);
      return node;
    });
    return { kind: 'list', span: this.spanAround(list, inside, '['), items };
  }

  private scalar(scalar: Scalar): ScalarNode {
    const span = this.trimmed(spanOf(scalar, { start: 0, end: 0 }));
    const { value } = scalar;
    const written = this.text.slice(span.start, span.end);
    if (scalar.type === 'PLAIN' && typeof value === 'number') checkNumber(written, span, this.faults);
    if (scalar.type === 'QUOTE_DOUBLE') checkValueCharacters(String(value), span, this.faults);
    return { kind: 'scalar', span, value: plain(value) };
  }

  /** A collection from bracket to bracket; without brackets, from its first part to the end of its last. */
  private spanAround(node: YAMLMap | YAMLSeq, inside: Span | null, bracket: string): Span {
    const whole = spanOf(node, inside ?? { start: 0, end: 0 });
    if (this.text[whole.start] === bracket || !inside) return whole;
    return { start: Math.min(whole.start, inside.start), end: inside.end };
  }

  /** Without the line ends that a text over several lines takes with it. */
  private trimmed({ start, end }: Span): Span {
    let last = end;
    while (last > start && lineEnds.has(this.text[last - 1] ?? '')) last -= 1;
    return { start, end: last };
  }
}

function spanOf(node: unknown, otherwise: Span): Span {
  const range = (node as { range?: readonly number[] | null } | null)?.range;
  return range ? { start: range[0] ?? 0, end: range[1] ?? 0 } : otherwise;
}

const lineEnds: ReadonlySet<string> = new Set(['\r', '\n', ' ']);

/** The span that holds both; of nothing and one, that one. */
function around(whole: Span | null, part: Span): Span {
  if (!whole) return part;
  return { start: Math.min(whole.start, part.start), end: Math.max(whole.end, part.end) };
}

/** Whatever the parser made of a scalar, as one of the values that a document can hold. Minus zero is zero. */
function plain(value: unknown): ScalarNode['value'] {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  return typeof value === 'number' ? value + 0 : null;
}
