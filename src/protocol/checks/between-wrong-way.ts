import { conditionsIn, everyConditionOf } from '../walk.ts';
import type { NumberComparison } from '../protocol.ts';
import { quantityWords } from './in-words.ts';
import type { Check } from './check.ts';

/** `between` runs from the lower number to the higher. */
export const betweenWrongWay: Check = ({ protocol }, report) => {
  for (const condition of everyConditionOf(protocol)) {
    const ends = new Map<string, NumberComparison>();
    for (const each of conditionsIn(condition)) {
      if (each.kind !== 'compare' || each.path.at(-2) !== 'between') continue;
      const path = each.path.slice(0, -1);
      const from = ends.get(path.join('/'));
      ends.set(path.join('/'), each);
      if (
        from?.to.kind !== 'number' ||
        each.to.kind !== 'number' ||
        from.to.value.compare(each.to.value) <= 0
      )
        continue;
      const words = [from.to, each.to].map(({ value, unit }) => quantityWords(value, unit));
      report('between_wrong_way', path, { from: words[0] as string, to: words[1] as string });
    }
  }
};
