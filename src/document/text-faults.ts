import type { Facts } from '../problems/catalogue.ts';
import type { Span } from '../problems/place.ts';
import type { Problem } from '../problems/problem.ts';
import type { textWording } from '../problems/wording/text.ts';
import { limits } from './limits.ts';
import { Places, type Fault } from './placed.ts';

export type TextCode = keyof typeof textWording;

/** After these the rest of the text can still be looked at; after any other, what was meant cannot be known. */
const mild: ReadonlySet<TextCode> = new Set([
  'hidden_character',
  'broken_character',
  'key_twice',
  'key_reserved',
  'number_not_plain',
  'number_too_long',
]);

/** Collects what is wrong in one text. */
export class TextFaults {
  private readonly places: Places;
  private readonly faults: Fault<TextCode>[] = [];

  constructor(file: string, text: string) {
    this.places = new Places(file, text);
  }

  add<C extends TextCode>(code: C, span: Span, facts: Facts<C>): void {
    if (!this.full) this.faults.push({ code, span, facts, nearMiss: null });
  }

  /** Whether there are more than are told at once, so that looking on is in vain. */
  get full(): boolean {
    return this.faults.length > limits.problems;
  }

  get isEmpty(): boolean {
    return this.faults.length === 0;
  }

  /** Whether nothing stands in the way of looking at the rest of the text. */
  get onlyMild(): boolean {
    return this.faults.every((fault) => mild.has(fault.code));
  }

  problems(): Problem[] {
    return this.places.problems(this.faults);
  }
}
