import { atEnd, type Diagram, type Diagrams, type Lacking } from '../../diagrams/diagrams.ts';
import { piecesOf, type Variable } from '../../diagrams/variables.ts';
import type { Calling, Whole } from './calls.ts';
import { holdsNowhere, noneTogether } from './holds-nowhere.ts';

/**
 * Whether no level of a set with everything given is out of reach while something of it is blank. Asked of each rule that calls for a level: it
 * could still call for it, or another rule could. Its own answer is nearly always enough, and else with that of one other: so all are asked last.
 */
export function nothingHides(whole: Whole, about: Diagram, blank: ReadonlySet<string>): boolean {
  const { store } = whole.space;
  const lacks = lacksOf(whole, blank);
  const given = store.and(
    ...[...lacks].map(([place, { values, last }]) =>
      store.node(place, [values - 1, last], [store.yes, store.no]),
    ),
  );
  const isReached = (calling: Calling, level: number): boolean => {
    const first = [calling.calls(level), given, about];
    const out = (each: Calling): Diagram => store.not(each.could(level));
    const hides = (outOfReach: Diagram): Diagram =>
      store.orLacking(asAgesAllow(whole, outOfReach, lacks), lacks);
    const own = out(calling);
    const others = whole.callings.filter((each) => each !== calling && each.level >= level);
    return (
      noneTogether(whole, [hides(own), ...first]) ||
      others.some((each) => noneTogether(whole, [hides(store.and(own, out(each))), ...first])) ||
      holdsNowhere(whole, [hides(store.and(own, ...others.map(out))), ...first])
    );
  };
  return whole.callings.every((calling) =>
    [...new Set([calling.level, calling.explained])]
      .filter((level) => level > 0)
      .every((level) => isReached(calling, level)),
  );
}

/** What may be left blank: by the place of the variable. Left blank is not taken, not tried and not obtained. */
function lacksOf({ space }: Whole, blank: ReadonlySet<string>): ReadonlyMap<number, Lacking> {
  const found = [...blank].flatMap((name): [number, Lacking][] => {
    const place = space.placeOf.get(name);
    const variable = place === undefined ? undefined : space.variables[place];
    return place === undefined || !variable ? [] : [[place, lackingOf(variable)]];
  });
  return new Map(found);
}

function lackingOf(variable: Variable): Lacking {
  const lacks = variable.lacks.flatMap(({ unobtainable }, index) =>
    unobtainable ? [] : [variable.values + index],
  );
  return { values: variable.values, lacks, last: piecesOf(variable) - 1 };
}

/** The same, only where what is missing may be what the age allows. Of what is not asked for it does not matter. */
function asAgesAllow({ space }: Whole, truth: Diagram, lacks: ReadonlyMap<number, Lacking>): Diagram {
  const asked = variablesBehind(space.store, truth);
  const allowed = [...space.ages].flatMap(([place, is]) =>
    lacks.has(place) && asked.has(place) ? [is] : [],
  );
  return space.store.and(truth, ...allowed);
}

function variablesBehind(store: Diagrams, diagram: Diagram): ReadonlySet<number> {
  const [found, seen] = [new Set<number>(), new Set<Diagram>()];
  const open = [diagram];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const variable = store.variableOf(next);
    if (variable === atEnd || seen.has(next)) continue;
    seen.add(next);
    found.add(variable);
    open.push(...store.kidsOf(next));
  }
  return found;
}
