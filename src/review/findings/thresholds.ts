import { protocolToLogic } from '../../logic/protocol-to-logic.ts';
import { askedWords, quantityWords } from '../../protocol/checks/in-words.ts';
import type { NumberComparison } from '../../protocol/protocol.ts';
import { comparisonsIn, conditionsOf } from '../../protocol/walk.ts';
import { placeWords } from '../changes/making.ts';
import { logicOfSingleSet } from '../diagrams/single-set.ts';
import type { Asking, Happens } from './asking.ts';
import type { Found } from './finding.ts';
import { RuleTruths } from './rule-truths.ts';
import { rulesReached, withRulesAlone } from './rules-reached.ts';
import { withConstant } from './with-constant.ts';
import { sentences } from './wording.ts';

/**
 * Comparisons that could be left out: with each of them always holding, or never, every rule comes out the same for every set.
 * And cut points of a score with the same points on both sides.
 */
export function* thresholds(asking: Asking): Generator<Found> {
  const { protocol } = asking.compiled;
  const asked = conditionsOf({ ...protocol, faults: [], partitions: new Map() }).flatMap((condition) =>
    [...comparisonsIn(condition)].filter((each) => each.kind === 'compare'),
  );
  for (const comparison of asked) {
    if (isInLookBack(comparison, asking)) continue;
    const matters = mattersAtAll(comparison, asking);
    if (matters === 'yes') continue;
    const name = `${placeWords(comparison.path, asking.document)} changes nothing`;
    const head = { kind: 'threshold_changes_nothing', name, path: comparison.path } as const;
    if (matters !== 'no') yield { ...head, is: 'not_settled', because: matters };
    else {
      const sentence = sentences.threshold_changes_nothing(askedWords(comparison));
      yield { ...head, is: 'found', sentence, witnesses: [], needsAnswer: true };
    }
  }
  yield* bands(asking);
}

function* bands({ compiled: { protocol }, document }: Asking): Generator<Found> {
  for (const { name: measure, how } of protocol.measures.values()) {
    for (const part of how.kind === 'score' ? how.parts : []) {
      if (part.kind !== 'bands') continue;
      for (const [index, { to, included, points }] of part.bands.entries()) {
        if (!to || part.bands[index + 1]?.points !== points) continue;
        const path = [...part.path, index, included ? 'at_most' : 'below'];
        const name = `${placeWords(path, document)} changes nothing`;
        const sentence = sentences.band_changes_nothing(measure, quantityWords(to.value, to.unit));
        const head = { kind: 'threshold_changes_nothing', name, path } as const;
        yield { ...head, is: 'found', sentence, witnesses: [], needsAnswer: true };
      }
    }
  }
}

/** What a look back asks of each of its sets is no question about one. */
function isInLookBack({ path: [first, name] }: NumberComparison, { compiled }: Asking): boolean {
  const how = first === 'measures' ? compiled.protocol.measures.get(String(name))?.how : undefined;
  return how !== undefined && 'over' in how;
}

/** Whether it makes a difference both that a comparison may hold and that it may not. */
function mattersAtAll(comparison: NumberComparison, asking: Asking): Happens {
  const all = [false, true].map((holds) => differsWhen(comparison, holds, asking));
  return all.includes('no') ? 'no' : (all.find((each) => each !== 'yes') ?? 'yes');
}

function differsWhen(comparison: NumberComparison, holds: boolean, asking: Asking): Happens {
  const reached = rulesReached(comparison, asking.protocol);
  const changed = withConstant(withRulesAlone(asking.protocol, reached), comparison, holds);
  const [first, name] = comparison.path;
  const measure = first === 'measures' ? String(name) : null;
  const { logic } = protocolToLogic(changed);
  const single = new RuleTruths(asking.space, logicOfSingleSet(logic, changed));
  const every = asking.every && new RuleTruths(asking.space, logic);
  return asking.differs([asking.single, single], asking.every && every ? [asking.every, every] : null, {
    rules: reached,
    measure,
  });
}
