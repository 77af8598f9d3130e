import type { Node as JsonNode } from 'jsonc-parser';
import type { Span } from '../problems/place.ts';
import { checkValueCharacters } from './checks/characters.ts';
import { MapKeys } from './checks/keys.ts';
import { checkNumber } from './checks/number.ts';
import type { MapEntry, MapNode, Node, ScalarNode } from './document.ts';
import type { TextFaults } from './text-faults.ts';

/** Turns the parser's tree into ours. What cannot stand becomes a fault. */
export class JsonTreeReader {
  private readonly text: string;
  private readonly faults: TextFaults;

  constructor(text: string, faults: TextFaults) {
    this.text = text;
    this.faults = faults;
  }

  node(node: JsonNode): Node {
    if (node.type === 'object') return this.map(node);
    if (node.type !== 'array') return this.scalar(node);
    return { kind: 'list', span: spanOf(node), items: (node.children ?? []).map((item) => this.node(item)) };
  }

  private map(node: JsonNode): MapNode {
    const keys = new MapKeys(this.faults);
    const entries: MapEntry[] = [];
    for (const { children: [keyNode, valueNode] = [] } of node.children ?? []) {
      if (!keyNode || !valueNode) continue;
      const key = String(keyNode.value);
      const keySpan = spanOf(keyNode);
      const value = this.node(valueNode);
      checkValueCharacters(key, keySpan, this.faults);
      if (keys.accept(key, keySpan)) entries.push({ key, keySpan, value });
    }
    return { kind: 'map', span: spanOf(node), entries };
  }

  private scalar(node: JsonNode): ScalarNode {
    const span = spanOf(node);
    const value = node.value as ScalarNode['value'];
    if (typeof value === 'string') checkValueCharacters(value, span, this.faults);
    if (typeof value !== 'number') return { kind: 'scalar', span, value };
    checkNumber(this.text.slice(span.start, span.end), span, this.faults);
    return { kind: 'scalar', span, value: value + 0 };
  }
}

const spanOf = (node: JsonNode): Span => ({ start: node.offset, end: node.offset + node.length });
