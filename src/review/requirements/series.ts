import type { MapNode } from '../../document/document.ts';
import { numberNode } from '../examples/box-to-given.ts';
import { list, map, scalar, withKey } from '../examples/nodes.ts';
import { nearest, type Box } from './box.ts';
import { earlierFor, type Event, type Sought } from './earlier.ts';
import type { Question } from './question.ts';
import { hasValueName, lookBackName, type Variable } from './space.ts';
import type { Subject } from './subject.ts';
import type { Given } from './witness.ts';

/** Any day will do: a look back knows only how long ago something was. */
const now = Date.UTC(2026, 0, 5, 20);

/**
 * Series that end with these sets, and may give the look backs what a box asks of them: the earlier sets show what is looked back at alone, or
 * are in all else as the present one. They are no more than proposals; the evaluator replays them.
 */
export function seriesOf(
  box: Box,
  question: Question,
  subject: Subject,
  givens: readonly Given[],
): readonly (readonly Given[])[] {
  const events = soughtIn(box, question, subject).flatMap(earlierFor);
  const [first] = givens;
  if (events.length === 0 || !first) return [];
  return [bareSet, likeThePresent(first)].map((made) => {
    const earlier = setsAt(events, made, first);
    return givens.map((given) => asSeries(given, earlier));
  });
}

/** What each look back has to come out as. */
function soughtIn(box: Box, { space }: Question, subject: Subject): readonly Sought[] {
  const at = (name: string): number | null => {
    const index = space.find(name);
    return index === null ? null : nearest(box, index, space.variables[index] as Variable);
  };
  const seen = new Set<string>();
  return subject.parts.flatMap(({ protocol }) =>
    [...protocol.measures.values()].flatMap(({ name, how }): Sought[] => {
      const value = at(lookBackName(name));
      if (!('over' in how) || seen.has(name) || value === null || at(hasValueName(name)) === 0) return [];
      seen.add(name);
      const observation = subject.observations.get(how.observation ?? '') ?? null;
      const present = observation?.kind === 'number' ? at(observation.name) : null;
      return [{ how, observation, value, present }];
    }),
  );
}

type Made = (event: Event) => MapNode | null;

/** Only what is looked back at. */
const bareSet: Made = ({ was }) =>
  was ? map([[was.observation.name, numberNode(was.steps, was.observation)]]) : null;

/** As the present set but for what is looked back at. */
const likeThePresent =
  (present: Given): Made =>
  ({ was }) =>
    was
      ? withKey(observed(present), was.observation.name, numberNode(was.steps, was.observation))
      : observed(present);

const observed = (given: Given): MapNode => withKey(given, 'patient', null);

/** The earliest first; of one time there is one set. */
function setsAt(events: readonly Event[], made: Made, present: Given): MapNode[] {
  const sets = new Map<number, MapNode>();
  for (const event of events) {
    const set = made(event) ?? observed(present);
    const known = sets.get(event.back);
    const both = known ? set.entries.reduce((all, { key, value }) => withKey(all, key, value), known) : set;
    sets.set(event.back, both);
  }
  return [...sets].sort(([left], [right]) => right - left).map(([back, set]) => timed(now - back, set));
}

const timed = (at: number, { entries, ...set }: MapNode): MapNode => ({
  ...set,
  entries: [...map([['at', scalar(new Date(at).toISOString().replace('.000Z', 'Z'))]]).entries, ...entries],
});

function asSeries(given: Given, earlier: readonly MapNode[]): Given {
  const patient = given.entries.filter(({ key }) => key === 'patient');
  const sets = map([['sets', list([...earlier, timed(now, observed(given))])]]);
  return { ...sets, entries: [...patient, ...sets.entries] };
}
