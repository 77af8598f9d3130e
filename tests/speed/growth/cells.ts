import { bothEditions, coupled, manyRules } from './made-protocols.ts';
import { everyFinding, otherwise, requirement, rulesNeverMet, type GrowthQuestion } from './questions.ts';

/** One row of the table of growth: a question, and what it is asked of. */
export interface Cell {
  readonly asks: string;
  readonly of: string;
  readonly make: () => GrowthQuestion;
}

const rules = [25, 250, 2500].flatMap((count): Cell[] => {
  const of = `${count.toLocaleString('en')} rules`;
  return [
    { asks: 'a requirement', of, make: () => requirement(manyRules(count)) },
    { asks: 'rules that are never met', of, make: () => rulesNeverMet(manyRules(count)) },
    { asks: 'every kind of finding', of, make: () => everyFinding(manyRules(count)) },
  ];
});

const together = [2, 3, 4, 5].flatMap((count): Cell[] => {
  const of = `${count} observations reckoned with together`;
  return [
    { asks: 'a requirement', of, make: () => requirement(coupled(count)) },
    { asks: 'rules that are never met', of, make: () => rulesNeverMet(coupled(count)) },
  ];
});

const changed = [1, 5, 20].map((moved): Cell => {
  const many = 25;
  return {
    asks: 'what another edition changes',
    of: `${moved} of ${many} thresholds`,
    make: () => {
      const { both, pairs } = bothEditions(many, moved);
      return otherwise(manyRules(many), manyRules(many, moved), both, pairs);
    },
  };
});

export const cells: readonly Cell[] = [...rules, ...together, ...changed];
