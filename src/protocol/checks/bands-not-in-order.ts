import { quantityWords } from './in-words.ts';
import type { Check } from './check.ts';

/** Each band reaches further than the one before. `at_most` reaches further than `below` at the same number. */
export const bandsNotInOrder: Check = ({ protocol }, report) => {
  for (const { how } of protocol.measures.values()) {
    if (how.kind !== 'score') continue;
    for (const part of how.parts) {
      if (part.kind !== 'bands') continue;
      part.bands.forEach(({ to, included }, index) => {
        const before = part.bands[index - 1];
        if (!to || !before?.to) return;
        const order = to.value.compare(before.to.value);
        if (order > 0 || (order === 0 && included && !before.included)) return;
        const [last, here] = [before.to, to].map(({ value, unit }) => quantityWords(value, unit));
        report('bands_not_in_order', [...part.path, index], { before: last as string, at: here as string });
      });
    }
  }
};
