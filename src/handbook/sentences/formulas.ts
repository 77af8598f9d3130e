import type { Expression } from '../../protocol/protocol.ts';
import { readOperand, sayOperand } from './operands.ts';
import type { Speaker } from './speaker.ts';

const signs = { plus: '+', minus: '−', times: '×', divided_by: '÷' } as const;
type Sign = keyof typeof signs;
const binding: Readonly<Record<Sign, number>> = { plus: 1, minus: 1, times: 2, divided_by: 2 };
const tightest = 3;

/** A formula with what it is made of in words: `(the systolic pressure + 2 × the diastolic pressure) ÷ 3`. */
export function sayFormula(formula: Expression, speaker: Speaker, outer = 0): string {
  if (formula.kind === 'negative') return `−${sayFormula(formula.of, speaker, tightest)}`;
  if (!('left' in formula)) return sayOperand(formula, null, speaker);
  const own = binding[formula.kind];
  // What stands on the right needs brackets also where it binds as strongly: the left is always worked out first.
  const [left, right] = [sayFormula(formula.left, speaker, own), sayFormula(formula.right, speaker, own + 1)];
  const text = `${left} ${signs[formula.kind]} ${right}`;
  return own < outer ? `(${text})` : text;
}

/** The same back; null for what is no formula. */
export function readFormula(words: string, speaker: Speaker): Expression | null {
  const reader = new FormulaReader(words, speaker);
  const formula = reader.sum(1);
  return formula && reader.isAtEnd() ? formula : null;
}

const most = 100;

/** Reads from left to right; null as soon as something is not as it is said. */
class FormulaReader {
  readonly #words: string;
  readonly #speaker: Speaker;
  #at = 0;
  #depth = 0;

  constructor(words: string, speaker: Speaker) {
    this.#words = words;
    this.#speaker = speaker;
  }

  isAtEnd(): boolean {
    return this.#at === this.#words.length;
  }

  /** Everything that binds at least so strongly. */
  sum(least: number): Expression | null {
    this.#depth += 1;
    let left = this.#depth > most ? null : this.#single();
    for (let sign = this.#sign(least); left && sign; sign = this.#sign(least)) {
      this.#at += 3;
      const right: Expression | null = this.sum(binding[sign] + 1);
      left = right && { kind: sign, left, right };
    }
    this.#depth -= 1;
    return left;
  }

  #sign(least: number): Sign | null {
    const next = this.#words.slice(this.#at, this.#at + 3);
    const found = (Object.keys(signs) as Sign[]).find((sign) => next === ` ${signs[sign]} `);
    return found && binding[found] >= least ? found : null;
  }

  #single(): Expression | null {
    if (this.#takes('(')) {
      const inner = this.sum(1);
      return inner && this.#takes(')') ? inner : null;
    }
    const number = /^−[0-9]/.test(this.#words.slice(this.#at));
    if (!number && this.#takes('−')) {
      const of = this.sum(tightest);
      return of && { kind: 'negative', of };
    }
    return this.#operand();
  }

  #takes(letter: string): boolean {
    if (this.#words[this.#at] !== letter) return false;
    this.#at += 1;
    return true;
  }

  #operand(): Expression | null {
    const rest = this.#words.slice(this.#at);
    const found =
      /^(?:the limit (?:“[^“”]*”(?: \[\w+\])?|\[\w+\]) \([^()]*\)|(?:“[^“”]*”|\[\w+\]|[^“”[\]()+−×÷]|−(?=[0-9]))+)/.exec(
        rest,
      );
    const words = found?.[0].replace(/ $/, '') ?? '';
    this.#at += words.length;
    return readOperand(words, this.#speaker);
  }
}
