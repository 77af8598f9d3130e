import { askedWords } from '../../protocol/checks/in-words.ts';
import type { DeepCheck } from './deep-check.ts';

/** A comparison that no set can change says nothing: its number, or its direction, is not what was meant. */
export const comparisonFixed: DeepCheck = ({ logic }, report) => {
  for (const { comparison, holds } of logic.fixed) {
    const code = holds ? 'comparison_always_true' : 'comparison_never_true';
    report(code, comparison.path, { asked: askedWords(comparison) });
  }
};
