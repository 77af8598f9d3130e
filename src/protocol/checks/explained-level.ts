import type { Check } from './check.ts';

/** An explanation lowers a rule to a level between the lowest and the rule's own. */
export const explainedLevel: Check = ({ protocol }, report) => {
  for (const { name, level, explainedBy, path } of protocol.rules) {
    const lowered = explainedBy?.level;
    if (lowered === null || lowered === undefined) continue;
    const at = [...path, 'explained_by', 'level'];
    if (lowered === 0) report('explained_to_lowest', at, { name });
    else if (level === null || lowered >= level) report('explained_level_not_lower', at, { name });
  }
};
