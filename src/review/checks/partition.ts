import type { Logic } from '../../logic/logic.ts';
import { findSet, type Goal } from '../find-set.ts';
import { observationsBehind } from '../observations-behind.ts';
import { setInWords } from '../set-in-words.ts';
import type { DeepCheck, DeepChecked } from './deep-check.ts';

/** Of the conditions of a partition exactly one holds for every possible set: no hole, no overlap. */
export const partitionHolds: DeepCheck = (checked, report) => {
  for (const partition of checked.protocol.partitions.values()) {
    const parts = checked.logic.partitions.find(({ name }) => name === partition.name)?.of ?? [];
    const reads = observationsBehind(
      checked.logic,
      parts.flatMap(({ certain, possible }) => [certain, possible]),
    );
    const found = {
      hole: findSet(checked, reads, goal(parts, checked, 'hole')),
      overlap: findSet(checked, reads, goal(parts, checked, 'overlap')),
    };
    for (const kind of ['hole', 'overlap'] as const) {
      const each = found[kind];
      if (each.kind !== 'found') continue;
      const facts = { name: partition.name, set: setInWords(each.set, reads, checked.protocol) };
      report(kind === 'hole' ? 'partition_hole' : 'partition_overlap', partition.path, facts, {
        part: 'key',
      });
    }
    if (found.hole.kind === 'too_large' || found.overlap.kind === 'too_large') {
      report('partition_not_settled', partition.path, { name: partition.name }, { part: 'key' });
    }
  }
};

function goal(
  parts: Logic['partitions'][number]['of'],
  { evaluator }: DeepChecked,
  kind: 'hole' | 'overlap',
): Goal {
  const readers = parts.map(
    ({ certain, possible }) => [evaluator.reader(certain), evaluator.reader(possible)] as const,
  );
  return (result) => {
    let [sure, maybe] = [0, 0];
    for (const [certain, possible] of readers) {
      sure += certain(result);
      maybe += possible(result);
    }
    if (kind === 'hole') return maybe === 0 ? 'yes' : sure > 0 ? 'no' : 'open';
    return sure > 1 ? 'yes' : maybe < 2 ? 'no' : 'open';
  };
}
