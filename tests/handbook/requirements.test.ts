import { expect, test } from 'vitest';
import {
  readRequirement,
  sayRequirement,
  speakRequirement,
} from '../../src/handbook/sentences/requirements.ts';
import { sentencesToText, textToSentences } from '../../src/handbook/sentences/sentence.ts';
import { speakerOf } from '../../src/handbook/sentences/speaker.ts';
import { unplaced } from '../../src/handbook/sentences/unplaced.ts';
import { ladderText } from '../agreement/protocols.ts';
import { protocolOf } from '../agreement/kit.ts';
import { bundled, bundledNames, lessonNames } from '../bundled.ts';

/** One requirement of each kind, and of each form that a kind can have. */
const { protocol } = protocolOf(
  `protocol: small
edition: 1
title: Small
ladder: made_up_ladder
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic, diastolic, temperature, consciousness], helps: [head_injury] }
limits: { floor: { value: 90, unit: mmHg, between: [80, 100], set_by: prescriber } }
rules:
  - { rule: low, title: "Low, when “it” is met.", when: { systolic: { below: floor } }, level: call_now, says: Low., source: [council] }
  - { rule: hot, title: Hot, when: { temperature: { at_least: 38.5 } }, level: tell_someone, says: Hot., source: [council] }
  - { rule: hurt, title: Hurt, when: { diastolic: { below: 40 }, consciousness: { is: pain }, head_injury: { is: yes } }, level: call_now, says: Hurt., source: [council] }
hazards: { h: { harm: Harm., severity: slight, owner: The council } }
must_always:
  - { requirement: a, where: { systolic: { at_most: 79 } }, level_at_least: call_now, controls: [h] }
  - { requirement: b, where: { any: [{ systolic: { unobtainable: yes } }, { none: [{ rule: low }] }] }, level_at_most: tell_someone, controls: [h] }
  - { requirement: c, where: { temperature: { above: 39.1 }, head_injury: { is: yes } }, rule_met: hot, limits: as_written, controls: [h] }
  - { requirement: d, never_together: [low, hot], controls: [h] }
  - { requirement: e, getting_worse_never_lowers: { observation: temperature, going: up, between: [37.5, 41] }, controls: [h] }
  - { requirement: f, getting_worse_never_lowers: { observation: systolic, going: down }, controls: [h] }
  - { requirement: g, getting_worse_never_lowers: { observation: consciousness, through: [alert, voice] }, controls: [h] }
  - { requirement: h, nothing_hides: {}, controls: [h] }
  - { requirement: i, nothing_hides: { except: [systolic] }, controls: [h] }
  - { requirement: j, nothing_hides: { blank: [diastolic, head_injury], except: [systolic] }, limits: as_written, controls: [h] }
  - { requirement: k, where: { systolic: { above: 300 } }, no_level: yes, controls: [h] }
  - { requirement: l, fault_never_lowers: yes, controls: [h] }
  - { requirement: m, always_some_advice: yes, controls: [h] }
`,
  ladderText,
);
const speaker = speakerOf(protocol);

test.each(protocol.requirements.map((each) => [each.asks.kind, each] as const))(
  '%s: what is typed out from its sentences reads back to what is asked',
  (_, { asks, where, limits }) => {
    const said = sayRequirement({ asks, where, limits }, speaker);
    const typed = textToSentences(sentencesToText(said));
    expect(typed && readRequirement(typed, speaker)).toEqual({
      asks,
      where: where && unplaced(where, speaker),
      limits,
    });
  },
);

test('no two of them are said alike, and a word that is changed is not read', () => {
  const all = protocol.requirements.map((each) => sentencesToText(speakRequirement(each, speaker)));
  expect(new Set(all).size).toBe(all.length);
  const changed = [
    [0, 'at least', 'at the least'],
    [1, '“tell someone”', '“nobody”'],
    [3, 'These 2', 'These 3'],
    [4, 'lower', 'calmer'],
    [5, 'to 300', 'to 300.5'],
    [7, 'alone or together', 'together'],
    [9, 'of these 2', 'of these 3'],
    [12, 'any', 'every'],
  ] as const;
  for (const [place, from, to] of changed) {
    const text = (all[place] ?? '').replace(from, to);
    const typed = textToSentences(text);
    if (text !== all[place]) expect([text, typed && readRequirement(typed, speaker)]).toEqual([text, null]);
  }
});

test.each([...bundledNames, ...lessonNames])('%s: every requirement that it states can be said', (name) => {
  const each = bundled(name);
  for (const requirement of each.requirements)
    expect(speakRequirement(requirement, speakerOf(each)).length).toBeGreaterThan(1);
});
