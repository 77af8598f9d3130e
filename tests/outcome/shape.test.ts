import { expect, test } from 'vitest';
import { documentToCases } from '../../src/cases/document-to-cases.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { answersOf } from '../../src/outcome/answers.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import { askable, bundledNames, bundledText, lessonNames } from '../bundled.ts';
import { outcomeOfBounds } from './ask.ts';

test.each([...bundledNames, ...lessonNames])(
  'the outcome of every case of %s has its shape, and says what was found',
  (name) => {
    const compiled = askable(name);
    const path = `${name}/cases.yaml`;
    const { document } = yamlToDocument(path, bundledText(path));
    const cases = document ? documentToCases(document, compiled.protocol).cases : [];
    expect(cases.length).toBeGreaterThan(0);
    for (const { name: story, series } of cases) {
      const bounds = seriesToBounds(compiled.protocol, series);
      const { level, rules, applies } = outcomeOfBounds(compiled, bounds);
      const answers = answersOf(compiled, bounds);
      expect(applies, story).toBe(answers.applies);
      expect(level === null, story).toBe(answers.level === null);
      if (applies === 'no') continue;
      expect(
        rules.map(({ rule, state }) => [rule, state]),
        story,
      ).toEqual(answers.rules.map(({ rule, state }) => [rule.name, state]));
      for (const {
        rule,
        state,
        counts,
        decided_by: because,
        taken_back_by: by,
        waits_for: waits,
        no_value: none,
      } of rules) {
        const isExplained =
          state === 'undecided' && !counts
            ? waits !== undefined || none !== undefined
            : because !== undefined || by !== undefined;
        expect(isExplained, `${story}: ${rule}`).toBe(true);
      }
    }
  },
);
