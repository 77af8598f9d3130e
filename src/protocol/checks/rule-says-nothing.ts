import type { Check } from './check.ts';

/** A rule says something, or calls for a level. */
export const ruleSaysNothing: Check = ({ file }, report) => {
  file.rules.forEach(({ rule, says, level }, index) => {
    if (says === undefined && level === undefined)
      report('rule_says_nothing', ['rules', index, 'rule'], { name: rule });
  });
};
