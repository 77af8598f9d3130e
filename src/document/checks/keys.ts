import type { Span } from '../../problems/place.ts';
import type { TextFaults } from '../text-faults.ts';

/** Names under which JavaScript finds parts of its own. */
const reserved: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** Looks at the keys of one map as they come. `accept` says whether the key's entry is kept: the first of two equal keys is. */
export class MapKeys {
  private readonly seen = new Set<string>();
  private readonly faults: TextFaults;

  constructor(faults: TextFaults) {
    this.faults = faults;
  }

  accept(key: string, span: Span): boolean {
    if (reserved.has(key)) {
      this.faults.add('key_reserved', span, { key });
      return false;
    }
    if (this.seen.has(key)) {
      this.faults.add('key_twice', span, { key });
      return false;
    }
    this.seen.add(key);
    return true;
  }
}
