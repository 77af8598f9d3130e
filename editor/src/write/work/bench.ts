import {
  readProtocol,
  readWard,
  runCases,
  runWardCases,
  type CaseResult,
  type Problem,
} from '../../../../src/index.ts';
import type { CaseInFull, Checked, ProblemHere, Question } from '../messages.ts';
import type { Part, Texts } from '../parts.ts';
import { aroundOf, type Around } from './surroundings.ts';

/** What a worker keeps of what is open: the last texts, and what they were read to. */
export class Bench {
  private around: Around | null = null;

  open(question: Extract<Question, { kind: 'open' }>): void {
    this.around = aroundOf(question);
  }

  check(texts: Texts): Checked {
    const { around } = this;
    if (!around) throw new Error('nothing is open');
    return around.protocol.kind === 'ward' ? checkWard(around, texts) : checkProtocol(around, texts);
  }

  caseInFull(_name: string): CaseInFull | null {
    return null;
  }
}

function checkProtocol(around: Around, texts: Texts): Checked {
  const { protocol: site, parents } = around;
  const { ladder } = around.ladderOf(texts.protocol);
  const { protocol, problems } = readProtocol(site.file, texts.protocol, { ladder, parents });
  const ran = protocol && texts.cases.trim() !== '' ? runCases('cases.yaml', texts.cases, protocol) : nothing;
  return checked(protocol !== null, problems, ran);
}

function checkWard(around: Around, texts: Texts): Checked {
  const { ladder } = around.ladderOf(texts.protocol);
  const protocols = around.members(texts.protocol);
  const { ward, problems } = readWard(around.protocol.file, texts.protocol, { ladder, protocols });
  const ran = ward ? runWardCases('cases.yaml', texts.cases, ward) : nothing;
  return checked(ward !== null, problems, ran);
}

interface Ran {
  readonly results: readonly CaseResult[];
  readonly problems: readonly Problem[];
}

const nothing: Ran = { results: [], problems: [] };

function checked(usable: boolean, problems: readonly Problem[], ran: Ran): Checked {
  return {
    usable,
    problems: [
      ...problems.map((each) => here('protocol', each)),
      ...ran.problems.map((each) => here('cases', each)),
    ],
    cases: ran.results.map(({ name, differences }) => ({
      name,
      lines: { first: 1, last: 1 },
      passes: differences.length === 0,
      why: differences.map(({ what, expected, found }) => `${what}: expected ${expected}, found ${found}`),
      met: [],
    })),
    rules: [],
  };
}

const here = (part: Part, problem: Problem): ProblemHere => ({
  severity: problem.severity,
  part,
  line: problem.line,
  column: problem.column,
  length: problem.length,
  says: problem.says,
  expected: problem.expected,
  nearMiss: problem.near_miss,
  mends: [],
});
