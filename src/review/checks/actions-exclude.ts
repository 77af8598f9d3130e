import { compile } from '../../outcome/compile.ts';
import { nearestOf } from '../../protocol/names.ts';
import { actionsOf } from '../../protocol/walk.ts';
import { reportTogether } from '../report-together.ts';
import type { DeepCheck } from './deep-check.ts';

/** Actions that exclude each other are never advised at once; what an action excludes is an action of this protocol. */
export const actionsExclude: DeepCheck = ({ protocol, logic }, report) => {
  const known = new Set(actionsOf(protocol).map(({ id }) => id));
  const compiled = compile(protocol, logic);
  const rules = protocol.rules.map((rule) => ({ compiled, rule }));
  for (const rule of protocol.rules) {
    for (const [index, { id, excludes }] of rule.do.entries()) {
      excludes.forEach((other, which) => {
        const path = [...rule.path, 'do', index, 'excludes', which];
        if (known.has(other)) reportTogether({ first: id, second: other, path }, rules, report);
        else report('unknown_action', path, { name: other }, { nearMiss: nearestOf(other, known) });
      });
    }
  }
};
