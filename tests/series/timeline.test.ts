import { expect, test, vi } from 'vitest';
import type { GivenSet, Observed } from '../../src/series/series.ts';
import { Timeline } from '../../src/series/timeline.ts';
import { watchful } from './given.ts';
import { compare, lookBack } from './protocol-builder.ts';
import { named } from './row.ts';
import { wardProtocol } from './ward.ts';

vi.setConfig({ testTimeout: 60_000 });

const number = (value: number): Observed => ({
  kind: 'number',
  low: value,
  high: value,
  value,
  given: { text: String(value), moved: false },
});
const word = (choice: string): Observed => ({
  kind: 'choice',
  choice,
  given: { text: choice, moved: false },
});
const minute = 60_000;

function setAt(index: number): GivenSet {
  const observed = new Map<string, Observed>([
    ['heart_rate', number(50 + (index % 60))],
    ['systolic', number(index % 97 === 0 ? 900 : 90 + (index % 50))],
    ['oxygen_scale', word(index % 2 === 0 ? 'scale_1' : 'scale_2')],
  ]);
  return { at: index * 5 * minute, atText: `set ${index}`, observed };
}

test('a timeline keeps few of 100,000 sets, and still knows what it needs', () => {
  const timeline = new Timeline(watchful);
  let most = 0;
  for (let index = 0; index < 100_000; index += 1) {
    timeline.push(setAt(index));
    if (index % 1000 === 0) most = Math.max(most, timeline.kept);
  }
  // Three hours of sets every five minutes are 36, and as many statements of the oxygen scale.
  expect(most).toBeLessThanOrEqual(80);
  const { facts } = timeline.boundsAt(99_999 * 5 * minute);
  expect(facts.present.get('heart_rate')).toMatchObject({ state: 'given', range: [89, 89] });
  expect(facts.present.get('oxygen_scale')).toMatchObject({ state: 'given', choices: ['scale_2'] });
});

test('sets that come out of order, and questions about the past, are mistakes of the caller', () => {
  const timeline = new Timeline(watchful);
  timeline.push(setAt(2));
  expect(() => timeline.push(setAt(1))).toThrow(RangeError);
  expect(() => timeline.boundsAt(minute)).toThrow(RangeError);
  expect(() => timeline.boundsAt(null)).toThrow(RangeError);
});

test('a timeline can be asked again, also after a set of the same instant was added', () => {
  const timeline = new Timeline(watchful);
  timeline.push(setAt(1));
  const at = 5 * minute;
  const first = timeline.boundsAt(at);
  expect(timeline.boundsAt(at)).toEqual(first);
  timeline.push({ at, atText: 'again', observed: new Map([['heart_rate', number(99)]]) });
  expect(timeline.boundsAt(at).facts.present.get('heart_rate')).toMatchObject({ state: 'refused' });
  expect(first.facts.present.get('heart_rate')).toMatchObject({ state: 'given', range: [51, 51] });
});

test('a limit that is changed for a time is compared with while it holds, in look backs too', () => {
  const protocol = wardProtocol({
    low: lookBack('count', 'systolic', '4 h', { where: compare('systolic', 'below', 'mean_floor') }),
  });
  const until = 60 * minute;
  const change = {
    value: 70,
    by: 'Dr Ash',
    reason: null,
    from: null,
    until,
    given: { text: '70', moved: false },
  };
  const timeline = new Timeline(protocol, { standing: new Map(), limits: new Map([['mean_floor', change]]) });
  timeline.push({ at: 0, atText: 'first', observed: new Map([['systolic', number(69)]]) });
  const read = (at: number) => named(protocol, timeline.boundsAt(at).narrow, ['mean_floor:value', 'low:low']);
  expect(read(until - 1)).toEqual({ 'mean_floor:value': 70, 'low:low': 1 });
  expect(read(until)).toEqual({ 'mean_floor:value': 65, 'low:low': 0 });
});

test('what holds only for a time is refused where the question has none', () => {
  const given = { text: 'scale_2', moved: false };
  const side = { by: 'Dr Ash', reason: null, from: null, until: 60 * minute, given };
  const timeline = new Timeline(wardProtocol(), {
    standing: new Map([['oxygen_scale', { ...side, value: 'scale_2' }]]),
    limits: new Map([['mean_floor', { ...side, value: 70 }]]),
  });
  timeline.push({ at: null, atText: null, observed: new Map([['oxygen_scale', word('scale_1')]]) });
  const { facts } = timeline.boundsAt(null);
  expect(facts.present.get('oxygen_scale')).toMatchObject({
    state: 'refused',
    choices: ['scale_1', 'scale_2'],
  });
  expect(facts.limits.get('mean_floor')).toMatchObject({ steps: 65, by: null });
  expect(facts.refused.map(({ observation }) => observation)).toEqual(['oxygen_scale', 'mean_floor']);
});

test('of an instant that was written in two ways, the words do not depend on which came first', () => {
  const sets = ['2026-03-02T12:00:00Z', '2026-03-02T17:45:00+05:45'].map((atText): GivenSet => ({
    at: 0,
    atText,
    observed: new Map([['heart_rate', number(80)]]),
  }));
  const textOf = (inOrder: readonly GivenSet[]): string | null | undefined => {
    const timeline = new Timeline(watchful);
    for (const set of inOrder) timeline.push(set);
    timeline.push({ at: minute, atText: 'later', observed: new Map() });
    return timeline.boundsAt(minute).facts.present.get('heart_rate')?.atText;
  };
  expect(textOf(sets)).toBe('2026-03-02T12:00:00Z');
  expect(textOf(sets.toReversed())).toBe('2026-03-02T12:00:00Z');
});
