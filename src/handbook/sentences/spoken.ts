import type { Protocol } from '../../protocol/protocol.ts';
import { readMeasure, sayMeasure } from './measures.ts';
import {
  readApplies,
  readFault,
  readLimitLine,
  readPartition,
  sayApplies,
  sayFault,
  sayLimitLine,
  sayPartition,
} from './parts.ts';
import { readRule, ruleLogic, sayRule } from './rules.ts';
import { same } from './same.ts';
import type { Sentence } from './sentence.ts';
import { speakerOf, type Speaker } from './speaker.ts';
import { unplaced, unplacedMeasure, unplacedRule } from './unplaced.ts';

/** The whole logic of a protocol in sentences, each part under its name. */
export interface Spoken {
  /** What everything is called in it. */
  readonly speaker: Speaker;
  readonly applies: Sentence;
  readonly limits: ReadonlyMap<string, Sentence>;
  readonly faults: ReadonlyMap<string, readonly Sentence[]>;
  readonly measures: ReadonlyMap<string, readonly Sentence[]>;
  readonly rules: ReadonlyMap<string, readonly Sentence[]>;
  readonly partitions: ReadonlyMap<string, Sentence>;
}

/**
 * Says a checked protocol, and reads every sentence back before it lets go of it: what is read must be what runs. A sentence that is
 * not is a fault of this kit, never of the protocol, and stops everything.
 */
export function speak(protocol: Protocol): Spoken {
  const speaker = speakerOf(protocol);
  /** What is said of one part, once it was read back to the same. */
  const sure = <Said>(name: string, said: Said, meant: unknown, read: unknown): readonly [string, Said] => {
    if (!same(meant, read)) throw new Error(`the sentences of "${name}" do not read back to what they say`);
    return [name, said];
  };
  const applies = sayApplies(protocol, speaker);
  const meant = { applies: protocol.applies && unplaced(protocol.applies, speaker) };
  sure('applies_when', applies, meant, readApplies(applies, speaker));
  const limits = [...protocol.limits.values()].map((limit) => {
    const { name, unit, value, between, setBy } = limit;
    const said = sayLimitLine(limit, speaker);
    return sure(name, said, { name, unit, value, between, setBy }, readLimitLine(said, speaker));
  });
  const faults = protocol.faults.map((fault) => {
    const { name, when, readsHigh, readsLow } = fault;
    const said = sayFault(fault, speaker);
    const whole = { name, when: unplaced(when, speaker), readsHigh, readsLow };
    return sure(name, said, whole, readFault(said, speaker));
  });
  const measures = [...protocol.measures.values()].map((measure) => {
    const said = sayMeasure(measure, speaker);
    return sure(measure.name, said, unplacedMeasure(measure, speaker), readMeasure(said, speaker));
  });
  const rules = protocol.rules.map((rule) => {
    const said = sayRule(ruleLogic(rule), speaker);
    return sure(rule.name, said, unplacedRule(ruleLogic(rule), speaker), readRule(said, speaker));
  });
  const partitions = [...protocol.partitions.values()].map(({ name, of }) => {
    const said = sayPartition({ of }, speaker);
    const whole = { of: of.map((each) => unplaced(each, speaker)) };
    return sure(name, said, whole, readPartition(said, speaker));
  });
  return {
    speaker,
    applies,
    limits: new Map(limits),
    faults: new Map(faults),
    measures: new Map(measures),
    rules: new Map(rules),
    partitions: new Map(partitions),
  };
}
