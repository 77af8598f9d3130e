import type { Level, Protocol, Rule } from '../../protocol/protocol.ts';
import type { Asking } from './asking.ts';
import type { ChangedWords } from './comparison.ts';
import type { RulePair } from './rule-pairs.ts';
import type { Side } from './side.ts';

type Texts = ReadonlyMap<string, string>;

/** Everything that is said otherwise and changes no outcome. */
export function wordChanges(
  { members, pairs }: Asking,
  [before, after]: readonly [Side, Side],
): ChangedWords[] {
  const changes: ChangedWords[] = [];
  const compare = (kind: ChangedWords['kind'], where: string, was: Texts, is: Texts): void => {
    for (const key of new Set([...was.keys(), ...is.keys()])) {
      const [one, other] = [was.get(key) ?? null, is.get(key) ?? null];
      if (one !== other) changes.push({ kind, where: `${where}${key}`, before: one, after: other });
    }
  };
  if (after.kind === 'ward')
    compare('words', '', texts({ title: before.title }), texts({ title: after.title }));
  for (const { before: first, after: second } of members)
    if (first && second) compare('words', '', ofProtocol(first.protocol), ofProtocol(second.protocol));
  for (const pair of pairs) {
    if (!pair.before || !pair.after) continue;
    const where = `rule ${pair.after.rule.name}, `;
    compare('words', where, wordsOf(pair.before), wordsOf(pair.after));
    compare('advice', where, adviceOf(pair.before.rule), adviceOf(pair.after.rule));
  }
  for (const level of after.ladder.levels) {
    const other = before.ladder.levels.find(({ name }) => name === level.name);
    if (!other) continue;
    compare(
      'words',
      `level ${level.name}, `,
      texts({ title: other.title, says: other.says }),
      texts({ title: level.title, says: level.says }),
    );
    compare('response', `level ${level.name}, `, responseOf(other), responseOf(level));
  }
  return changes;
}

const texts = (of: Readonly<Record<string, string | null | undefined>>): Texts =>
  new Map(
    Object.entries(of).flatMap(([key, value]) =>
      value === null || value === undefined || value === '' ? [] : [[key, value] as const],
    ),
  );

function ofProtocol({
  title,
  about,
  otherwise,
  reviewBy,
  owners,
  measures,
  limits,
  sources,
}: Protocol): Texts {
  return texts({
    'title of the protocol': title,
    about,
    otherwise,
    'review by': reviewBy,
    owners: owners.join(', '),
    ...Object.fromEntries(
      [...measures.values()].flatMap((each) => [
        [`measure ${each.name}, title`, each.title],
        [`measure ${each.name}, meaning`, each.meaning],
      ]),
    ),
    ...Object.fromEntries(
      [...limits.values()].flatMap((each) => [
        [`limit ${each.name}, title`, each.title],
        [`limit ${each.name}, set by`, each.setBy],
      ]),
    ),
    ...Object.fromEntries([...sources].map(([name, { cite }]) => [`source ${name}`, cite])),
  });
}

const wordsOf = ({ rule, member }: NonNullable<RulePair['before']>): Texts =>
  texts({
    title: rule.title,
    says: rule.says,
    because: rule.because,
    'what the exception says': rule.unless?.says,
    'what explains it': rule.explainedBy?.says,
    source: rule.sources.map((name) => member.protocol.sources.get(name)?.cite ?? name).join('; '),
  });

const adviceOf = (rule: Rule): Texts =>
  texts({
    ask: rule.ask.join(' / '),
    do: rule.do.map(({ text, under }) => `${text}${under === null ? '' : ` (${under})`}`).join(' / '),
  });

function responseOf({ tell, respond, reassess, ifNoAnswer, stepDown }: Level): Texts {
  return texts({
    tell: tell
      .map(({ who, from, to }) => `${who}${from === null ? '' : ` from ${from} to ${to ?? ''}`}`)
      .join(', '),
    respond,
    reassess,
    'if nobody answers': ifNoAnswer && `after ${ifNoAnswer.after}: ${ifNoAnswer.tell}`,
    'stepping down':
      stepDown &&
      `${stepDown.setsInARow} sets in a row over ${stepDown.over}, agreed by ${stepDown.agreedBy}`,
  });
}
