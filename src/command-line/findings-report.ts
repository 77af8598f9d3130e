import type { Finding, OpenQuestion } from '../review/findings/finding.ts';
import type { Findings } from '../review/findings/find-findings.ts';
import { answerInYaml, headings } from '../review/findings/wording.ts';

/** What was found about one protocol. */
export interface FindingsReport extends Findings {
  readonly protocol: string;
  readonly file: string;
}

/** The findings for which an answer is asked and none is given. */
export const unansweredFindings = ({ findings }: Findings): Finding[] =>
  findings.filter(({ needsAnswer, accepted }) => needsAnswer && accepted === null);

/** Everything that was found, by kind, for people. */
export function findingsInWords(report: FindingsReport): string {
  const { findings, open, protocol } = report;
  const kinds = [...new Set([...findings, ...open].map(({ kind }) => kind))];
  const parts = kinds.map((kind) =>
    [
      headings[kind],
      ...findings.filter((each) => each.kind === kind).map((each) => findingInWords(each, report)),
      ...open.filter((each) => each.kind === kind).map((each) => openInWords(each, report)),
    ].join('\n'),
  );
  const unanswered = unansweredFindings(report).length;
  const answered = findings.filter(({ needsAnswer }) => needsAnswer).length - unanswered;
  const told = findings.length - unanswered - answered;
  const counts = `${unanswered} to be answered, ${answered} accepted, ${told} told, ${open.length} not settled`;
  return `${[...parts, `${protocol}: ${counts}`].join('\n\n')}\n\n`;
}

function findingInWords(finding: Finding, { file }: FindingsReport): string {
  const { sentence, line, witnesses, accepted } = finding;
  const answer =
    accepted !== null
      ? [`    accepted: ${accepted}`]
      : finding.needsAnswer
        ? [
            '    TO BE ANSWERED: mend it, or say below findings: why it is meant so',
            `    ${answerInYaml(finding).trim()}`,
          ]
        : [];
  const cases =
    accepted === null && finding.needsAnswer && witnesses.length > 0
      ? ['    to be reviewed and pasted below cases:', '', ...witnesses.map(({ yaml }) => yaml)]
      : [];
  return [
    `  ${sentence}`,
    `    ${file}:${line}`,
    ...witnesses.map(({ words }, index) => `    ${index === 0 ? 'with' : 'and'} ${words}`),
    ...answer,
    ...cases,
  ].join('\n');
}

const openInWords = ({ name, line, sentence }: OpenQuestion, { file }: FindingsReport): string =>
  `  ${name}?\n    ${file}:${line}\n    ${sentence}`;

/** The same as plain JSON. */
export function findingsToJson({ protocol, file, findings, open, problems }: FindingsReport): unknown {
  return {
    protocol,
    file,
    findings: findings.map(({ needsAnswer, witnesses, ...finding }) => ({
      ...finding,
      needs_answer: needsAnswer,
      sets: witnesses,
    })),
    not_settled: open,
    problems,
  };
}
