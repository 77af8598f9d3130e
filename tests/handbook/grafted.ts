import type { Condition, Measure, Partition, Protocol, Rule } from '../../src/protocol/protocol.ts';
import { readMeasure, type MeasureLogic } from '../../src/handbook/sentences/measures.ts';
import { readApplies, readFault, readLimitLine, readPartition } from '../../src/handbook/sentences/parts.ts';
import { readRule } from '../../src/handbook/sentences/rules.ts';
import { speak } from '../../src/handbook/sentences/spoken.ts';
import { speakerOf } from '../../src/handbook/sentences/speaker.ts';

const there = <T>(value: T | null | undefined): T => {
  if (value === null || value === undefined) throw new Error('a sentence was not read back');
  return value;
};

/**
 * The protocol with all of its logic thrown away and taken from its sentences; from the file come only names, titles, words, and the
 * places that steps are named by.
 */
export function graftedProtocol(protocol: Protocol): Protocol {
  const speaker = speakerOf(protocol);
  const spoken = speak(protocol);
  const rule = (of: Rule): Rule => {
    const read = there(readRule(there(spoken.rules.get(of.name)), speaker));
    return {
      ...of,
      level: read.level,
      when: placed(read.when, of.when),
      unless: read.unless && { when: placed(read.unless, of.unless?.when), says: of.unless?.says ?? null },
      explainedBy: read.explainedBy && {
        when: placed(read.explainedBy.when, of.explainedBy?.when),
        level: read.explainedBy.level,
        says: of.explainedBy?.says ?? '',
      },
      notReliableWhen: read.notReliableWhen && placed(read.notReliableWhen, of.notReliableWhen),
    };
  };
  const measure = (of: Measure): Measure => {
    const { how, unit, notReliableWhen } = there(readMeasure(there(spoken.measures.get(of.name)), speaker));
    const blind = notReliableWhen && placed(notReliableWhen, of.notReliableWhen);
    return { ...of, unit, how: placedHow(how, of.how), notReliableWhen: blind };
  };
  const partition = (of: Partition): Partition => {
    const read = there(readPartition(there(spoken.partitions.get(of.name)), speaker));
    return { ...of, of: read.of.map((each, index) => placed(each, of.of[index])) };
  };
  const { applies } = there(readApplies(spoken.applies, speaker));
  return {
    ...protocol,
    applies: applies && placed(applies, protocol.applies),
    limits: mapped(protocol.limits, (of) => ({
      ...of,
      ...there(readLimitLine(there(spoken.limits.get(of.name)), speaker)),
    })),
    faults: protocol.faults.map((of) => {
      const read = there(readFault(there(spoken.faults.get(of.name)), speaker));
      return { ...of, ...read, when: placed(read.when, of.when) };
    }),
    measures: mapped(protocol.measures, measure),
    rules: protocol.rules.map(rule),
    rulesInOrder: protocol.rulesInOrder.map(rule),
    partitions: mapped(protocol.partitions, partition),
  };
}

const mapped = <T>(map: ReadonlyMap<string, T>, change: (value: T) => T): ReadonlyMap<string, T> =>
  new Map([...map].map(([name, value]) => [name, change(value)]));

/** A condition with the places of another of the same form. */
function placed(read: Condition, of: Condition | null | undefined): Condition {
  if (!of || read.kind !== of.kind) throw new Error('a condition was read back as another');
  if (!('of' in read) || !('of' in of)) return { ...read, path: of.path };
  return { ...read, of: read.of.map((each, index) => placed(each, of.of[index])), path: of.path };
}

function placedHow(read: MeasureLogic['how'], of: Measure['how']): Measure['how'] {
  if (read.kind === 'formula') return { ...read, text: of.kind === 'formula' ? of.text : '' };
  if (read.kind === 'score' && of.kind === 'score')
    return {
      kind: 'score',
      parts: read.parts.map((part, index) => ({ ...part, path: there(of.parts[index]).path })),
    };
  if (read.kind === 'choose' && of.kind === 'choose') {
    const entries = read.entries.map(({ when, use }, index) => ({
      when: when && placed(when, of.entries[index]?.when),
      use,
    }));
    return { kind: 'choose', entries };
  }
  if ('over' in read && 'over' in of)
    return {
      ...read,
      condition: read.condition && placed(read.condition, of.condition),
      where: read.where && placed(read.where, of.where),
    };
  return read;
}
