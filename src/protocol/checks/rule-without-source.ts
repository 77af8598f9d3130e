import type { Check } from './check.ts';

/** A rule says where it comes from. */
export const ruleWithoutSource: Check = ({ file }, report) => {
  file.rules.forEach(({ rule, source }, index) => {
    if (!source?.length) report('rule_without_source', ['rules', index, 'rule'], { name: rule });
  });
};
