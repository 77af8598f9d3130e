import type { Code, Facts } from '../problems/catalogue.ts';
import type { Span } from '../problems/place.ts';
import { problemAt, type NearMiss, type Problem } from '../problems/problem.ts';
import { limits } from './limits.ts';
import { Lines } from './lines.ts';

/** What is wrong at a span of a text, before line and column are worked out. */
export interface Fault<C extends Code = Code> {
  readonly code: C;
  readonly span: Span;
  readonly facts: Facts<C>;
  readonly nearMiss: NearMiss;
}

/** Gives faults of one text their lines and columns. The text is searched for line ends once, however many faults there are. */
export class Places {
  private readonly file: string;
  private readonly length: number;
  private readonly lines: Lines;

  constructor(file: string, text: string) {
    this.file = file;
    this.length = text.length;
    this.lines = new Lines(text);
  }

  problem(fault: Fault): Problem {
    const start = Math.min(fault.span.start, this.length);
    const line = this.lines.at(start);
    const inLine = { start: start - line.start, end: fault.span.end - line.start };
    const near = typeof fault.nearMiss === 'function' ? fault.nearMiss() : fault.nearMiss;
    const problem = problemAt(this.file, line.source, inLine, fault.code, fault.facts, near);
    return { ...problem, line: line.index + 1 };
  }

  /**
   * The problems in the order of their places. When there are more than are told at once, the last one says so: nobody is left
   * to think that the list is the whole.
   */
  problems(faults: readonly Fault[]): Problem[] {
    const sorted = [...faults].sort((left, right) => left.span.start - right.span.start);
    const told = sorted.slice(0, limits.problems).map((fault) => this.problem(fault));
    const next = sorted[limits.problems];
    if (next) {
      const facts = { shown: limits.problems };
      told.push(this.problem({ code: 'more_problems', span: next.span, facts, nearMiss: null }));
    }
    return told;
  }
}
