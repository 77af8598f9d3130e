import type { Protocol } from '../protocol/protocol.ts';
import type { SheetRaise } from './sheet.ts';
import { choiceTitle, stepsInWords } from './words.ts';
import type { Raise } from './would-raise.ts';

/** What would raise the level, in words. `3 mmHg lower, at 101 mmHg`: `Call the doctor`. */
export function raisesInWords(raises: readonly Raise[], protocol: Protocol): readonly SheetRaise[] {
  return raises.map((raise) => {
    const title = protocol.ladder.levels[raise.level]?.title ?? '';
    return {
      observation: raise.observation.name,
      title: raise.observation.title,
      change: changeInWords(raise),
      level: raise.settled ? title : `at least ${title}`,
    };
  });
}

function changeInWords({ observation, number, choices }: Raise): string {
  if (!number) return choices.map((choice) => choiceTitle(choice, observation)).join(' or ');
  const distance = stepsInWords(Math.abs(number.away), observation);
  return `${distance} ${number.away < 0 ? 'lower' : 'higher'}, at ${stepsInWords(number.steps, observation)}`;
}
