import type { Protocol } from '../protocol/protocol.ts';
import type { SheetRaise } from './sheet.ts';
import { choiceTitle, stepsInWords } from './words.ts';
import type { Change } from './would-change.ts';

/** What would raise the level, in words. `3 mmHg lower, at 101 mmHg`: `Call the doctor`. */
export function raisesInWords(raises: readonly Change[], protocol: Protocol): readonly SheetRaise[] {
  return raises.map((raise) => {
    const title = protocol.ladder.levels[raise.level.atLeast ?? 0]?.title ?? '';
    return {
      observation: raise.observation.name,
      title: raise.observation.title,
      change: changeInWords(raise),
      level: raise.level.settled ? title : `at least ${title}`,
    };
  });
}

/** Changes in words, also to where nothing is settled: `not settled; it could be as high as Call the doctor`. */
export function changesInWords(changes: readonly Change[], { ladder }: Protocol): readonly SheetRaise[] {
  const title = (level: number): string => ladder.levels[level]?.title ?? '';
  return changes.map((change) => {
    const { atLeast, couldBe, settled } = change.level;
    const from = atLeast === null ? 'not settled' : settled ? title(atLeast) : `at least ${title(atLeast)}`;
    const could = couldBe > (atLeast ?? 0) ? `; it could be as high as ${title(couldBe)}` : '';
    return {
      observation: change.observation.name,
      title: change.observation.title,
      change: changeInWords(change),
      level: from + could,
    };
  });
}

function changeInWords({ observation, number, choices }: Change): string {
  if (!number) return choices.map((choice) => choiceTitle(choice, observation)).join(' or ');
  const distance = stepsInWords(Math.abs(number.away), observation);
  return `${distance} ${number.away < 0 ? 'lower' : 'higher'}, at ${stepsInWords(number.steps, observation)}`;
}
