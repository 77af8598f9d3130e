import type { Answers } from '../../outcome/answers.ts';
import type { Change } from '../changes/change.ts';
import type { Answered } from './answered.ts';
import type { Given } from './given.ts';
import { nodeToYaml, textToYaml } from './node-to-yaml.ts';
import type { Telling } from './telling.ts';

/**
 * A case that notices a change, as YAML ready to be pasted below `cases:`. It expects what the protocol says as it stands: whether that
 * is right is for people to say, so its name asks for a review and it cites no source.
 */
export function caseInYaml(change: Change, given: Given, before: Answered, told: Telling): string {
  return [
    `  - case: ${textToYaml(`To be reviewed: ${change.name}`)}`,
    ...givenLines(given),
    '    expect:',
    ...expected(before, told).map((line) => `      ${line}`),
    '',
  ].join('\n');
}

/** What is given, as lines of a case. */
export function givenLines({ key, node }: Given): string[] {
  const sets = node.entries.find((entry) => entry.key === 'sets')?.value;
  if (sets?.kind !== 'list') return [`    ${key}: ${nodeToYaml(node)}`];
  const others = node.entries.filter((entry) => entry.key !== 'sets');
  return [
    `    ${key}:`,
    ...others.map((entry) => `      ${entry.key}: ${nodeToYaml(entry.value)}`),
    '      sets:',
    ...sets.items.map((set) => `        - ${nodeToYaml(set)}`),
  ];
}

function expected({ compiled, answers }: Answered, told: Telling): string[] {
  const lists = [
    ...(['met', 'not_met', 'undecided'] as const).map(
      (state) => [state, told.states.get(state) ?? []] as const,
    ),
    ['explained', told.explained] as const,
    ['not_reliable', told.notReliable] as const,
  ];
  return [
    ...levelLine(
      answers,
      compiled.protocol.ladder.levels.map(({ name }) => name),
    ),
    ...(told.applies === null ? [] : [`applies: ${told.applies}`]),
    ...lists.flatMap(([key, names]) => (names.length > 0 ? [`${key}: [${names.join(', ')}]`] : [])),
    ...(told.measures.size === 0
      ? []
      : [`measures: { ${[...told.measures].map(([name, is]) => `${name}: ${is}`).join(', ')} }`]),
  ];
}

export function levelLine({ level }: Answers, levels: readonly string[]): string[] {
  if (!level) return [];
  const { atLeast, couldBe, settled } = level;
  const name = (index: number | null): string => (index === null ? 'none' : (levels[index] ?? 'none'));
  return [
    `level: { at_least: ${name(atLeast)}, could_be: ${name(couldBe)}, settled: ${settled ? 'yes' : 'no'} }`,
  ];
}
