import Fraction from 'fraction.js';
import { listed, plainWords } from '../protocol/words.ts';
import { quantityWords } from '../protocol/checks/in-words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Box } from './box.ts';

/** A set as a list of its values, only of the observations that are named: `systolic 100 mmHg and diastolic 80 mmHg`. */
export function setInWords(set: Box, names: Iterable<string>, { observations }: Protocol): string {
  const words = [...names].flatMap((name) => {
    const observation = observations.get(name);
    if (!observation) return [];
    const range = set.ranges.get(name);
    if (range) {
      const value = new Fraction(range[0]).div(observation.stepsPerUnit);
      return [`${plainWords(name)} ${quantityWords(value, observation.unit)}`];
    }
    const chosen = observation.choices.filter(({ choice }) =>
      observation.kind === 'several'
        ? set.choices.get(`${name}:${choice}`)?.[0] === 'yes'
        : set.choices.get(name)?.[0] === choice,
    );
    return [`${plainWords(name)} ${listed(chosen.map(({ title }) => title)) || 'none'}`];
  });
  return listed(words);
}
