import {
  groundInWords,
  notWhole,
  othersInWords,
  regionLines,
  ruleIsWords,
} from '../compare/comparison-in-words.ts';
import type { ChangedLevel, Comparison, OtherLevels, Witness } from '../compare/comparison.ts';
import type { StoredLine, StoredPart } from './stored-results.ts';

const line = (says: string, more: readonly string[] = []): StoredLine => ({ says, line: null, more });

/** A comparison in sentences: the verdict, then everything that changes, and what it is about. */
export function comparisonToStored(comparison: Comparison): StoredPart {
  const { before, after, says, by_protocol: byProtocol } = comparison;
  const of = { levels: comparison.levels, whole: comparison.levels_whole, others: comparison.other_levels };
  return {
    title: `Compared with edition ${before.edition}`,
    says,
    lines: [
      line(`Before: ${before.title}, edition ${before.edition}. After: ${after.title}, the draft.`),
      ...levelLines(of, ''),
      ...byProtocol.flatMap(({ protocol, levels, levels_whole: whole, other_levels: others }) =>
        levelLines({ levels, whole, others }, `${protocol} by itself. `),
      ),
      ...comparison.rules.map((rule) =>
        line(`Rule ${rule.rule} (“${rule.title}”): ${ruleIsWords(rule)}`, [
          ...rule.differences,
          ...rule.stands.flatMap((stand) => [
            `${stand.before} before, ${stand.after} now. ${groundInWords(stand.ground)}`,
            ...regionLines(stand),
            exampleOf(stand.witness),
          ]),
        ]),
      ),
      ...comparison.renamed.map(({ protocol, from, to }) =>
        line(`${protocol}: ${from} is now ${to}, and asks the same.`),
      ),
      ...comparison.limits.map(({ limit, before: was, after: is }) =>
        line(`Limit ${limit}: ${was ?? 'not there'} before, ${is ?? 'gone'} now.`),
      ),
      ...comparison.words.map(({ where, before: was, after: is }) =>
        line(`Words only: ${where}`, [`Before: ${was ?? 'nothing'}`, `After: ${is ?? 'nothing'}`]),
      ),
      ...comparison.cases.map(({ case: name, before: was, after: is, rules }) =>
        line(`Case “${name}”: ${was === is ? is : `${was} before, ${is} now`}`, rules),
      ),
      line('What this is about:', comparison.over),
      ...(comparison.not_settled.length > 0 ? [line('Not settled:', comparison.not_settled)] : []),
    ],
  };
}

interface Levels {
  readonly levels: readonly ChangedLevel[];
  readonly whole: boolean;
  readonly others: OtherLevels | null;
}

const directions = { lower: 'Lower', higher: 'Higher', otherwise: 'Otherwise' } as const;

function levelLines({ levels, whole, others }: Levels, start: string): StoredLine[] {
  return [
    ...(whole ? [] : [line(`${start}${notWhole}`)]),
    ...levels.map((level) =>
      line(`${start}${directions[level.direction]}: “${level.before}” becomes “${level.after}”.`, [
        groundInWords(level.ground),
        ...regionLines(level),
        exampleOf(level.witness),
        ...level.because.map((each) => `Because: ${each}`),
        ...level.course.map((each) => `In a series: ${each}`),
      ]),
    ),
    ...(['complete', 'incomplete'] as const).flatMap((key) => {
      const all = others?.[key] ?? [];
      if (all.length === 0) return [];
      const each = all.map(
        ({ direction, before, after, witness }) =>
          `${directions[direction]}: “${before}” becomes “${after}”. For example: ${witness.in_words}`,
      );
      return [line(`${start}${othersInWords[key]}`, each)];
    }),
  ];
}

const exampleOf = ({ in_words: words, before, after }: Witness): string =>
  `For example: ${words}: ${before === after ? after : `${before} before, ${after} now`}`;
