import type { Logic } from '../logic/logic.ts';
import type { Protocol } from '../protocol/protocol.ts';

/** Where one observation stands among the inputs; -1 for a part that it has not. */
export interface ObservationPlaces {
  readonly low: number;
  readonly high: number;
  /** In the order of its choices. */
  readonly may: readonly number[];
  readonly sure: readonly number[];
  readonly known: number;
  readonly unobtainable: number;
  readonly missing: number;
  /** Of all of these, the first and the one after the last. */
  readonly from: number;
  readonly to: number;
}

/** Where everything that enters logic stands. */
export interface Places {
  readonly observations: ReadonlyMap<string, ObservationPlaces>;
  /** From where look backs stand, up to the end. */
  readonly lookBacks: number;
  /** The place of an input by its name. */
  of(input: string): number;
}

export function places({ observations }: Protocol, { inputs }: Logic): Places {
  const place = new Map(inputs.map(({ name }, index) => [name, index]));
  const of = (input: string): number => {
    const found = place.get(input);
    if (found === undefined) throw new Error(`no input is called ${input}`);
    return found;
  };
  const all = new Map<string, ObservationPlaces>();
  for (const { name, choices } of observations.values()) {
    const part = (key: string): number => place.get(`${name}:${key}`) ?? -1;
    const own = inputs.flatMap((input, index) =>
      input.of === 'observation' && input.owner === name ? [index] : [],
    );
    all.set(name, {
      low: part('low'),
      high: part('high'),
      may: choices.map(({ choice }) => part(`may:${choice}`)),
      sure: choices.map(({ choice }) => part(`sure:${choice}`)).filter((each) => each !== -1),
      known: part('known'),
      unobtainable: part('unobtainable'),
      missing: part('missing'),
      from: Math.min(...own),
      to: Math.max(...own) + 1,
    });
  }
  const first = inputs.findIndex((input) => input.of === 'look_back');
  return { observations: all, lookBacks: first === -1 ? inputs.length : first, of };
}
