import type { Code } from '../problems/catalogue.ts';
import type { Path } from '../problems/place.ts';
import type { Node } from '../document/document.ts';
import { scalarOf, shortened, type SetReading } from './set-reading.ts';
import { textToTime, type TimeFault } from './text-to-time.ts';

/** A time, and how it was written. */
export interface WrittenTime {
  /** In milliseconds since 1970. */
  readonly at: number;
  readonly text: string;
}

const codes = {
  unreadable: 'set_time_unreadable',
  without_offset: 'set_time_without_offset',
  too_fine: 'set_time_too_fine',
  impossible: 'set_time_impossible',
  leap_second: 'set_time_leap_second',
} as const satisfies Record<TimeFault, Code>;

/** Reads a time. Null when it is none; the report has the reason. */
export function readTime(node: Node, path: Path, reading: SetReading): WrittenTime | null {
  const text = String(scalarOf(node));
  const time = textToTime(text);
  if (typeof time === 'number') return { at: time, text };
  reading.report(codes[time], path, { written: shortened(text) });
  return null;
}
