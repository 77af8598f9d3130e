import {
  answerBefore,
  moveOf,
  type ChangedPlane,
  type Move,
  type Plane,
  type PlaneAnswer,
} from '../../../../src/index.ts';
import { blank, dark, pale, shadeOf, type Fill, type Pattern } from './fill.ts';

const asBefore: Fill = { key: 'same', words: 'As before', colour: null, pattern: null, ink: '#545b6b' };

const patternOf: Readonly<Record<Exclude<Move, 'same'>, Pattern>> = {
  higher: 'rising',
  lower: 'falling',
  otherwise: 'bars',
  rules: 'dots',
};

const words: Readonly<Record<Exclude<Move, 'same' | 'rules'>, string>> = {
  higher: 'Higher',
  lower: 'Lower',
  otherwise: 'Otherwise',
};

/** Blank paper where nothing changes; else the shade of the level that is called for now, with a pattern for where it goes. */
export function changeFill(answer: PlaneAnswer, plane: ChangedPlane): Fill {
  const at = plane.answers.indexOf(answer);
  const was = answerBefore(plane, at);
  const move = moveOf(plane, at);
  if (move === 'same') return answer.refused.length > 0 ? blank : asBefore;
  const pattern = patternOf[move];
  if (move === 'rules')
    return { key: 'rules', words: 'Same level, other rules', colour: '#fffdf8', pattern, ink: pale };
  const said = `${words[move]}: ${short(was, plane.was)} becomes ${short(answer, plane)}`;
  const { level } = answer;
  const shade = level ? shadeOf(level.atLeast ?? 0, plane.levels.length) : { colour: '#fffdf8', ink: pale };
  return { key: said, words: said, pattern, ...shade, ink: shade.ink === dark ? dark : pale };
}

/** The order of the legend: what is called for now, the lowest first; what stays as it was last. */
export function heightOfChange(answer: PlaneAnswer, plane: Plane | ChangedPlane): number {
  const { key } = 'was' in plane ? changeFill(answer, plane) : blank;
  if (key === asBefore.key) return 100;
  return key === 'rules' ? 99 : (answer.level?.couldBe ?? -1);
}

function short({ refused, level }: PlaneAnswer, { levels }: Plane): string {
  if (refused.length > 0) return 'not possible';
  if (!level) return 'no level';
  const title = (at: number): string => levels[at]?.title ?? '';
  if (level.settled) return title(level.atLeast ?? 0);
  return level.atLeast === null
    ? `no result (could be ${title(level.couldBe)})`
    : `${title(level.atLeast)} (could be ${title(level.couldBe)})`;
}
