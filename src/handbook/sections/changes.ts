import { groundInWords, regionLines, ruleIsWords } from '../../review/compare/comparison-in-words.ts';
import type { ChangedLevel, ChangedRule, ChangedWords, Comparison } from '../../review/compare/comparison.ts';
import { html, type Html } from '../html.ts';
import { shortDigest } from '../short-digest.ts';
import { list } from './logic.ts';
import type { Section } from './section.ts';

/** What changes since the last sealed edition; nothing where this is the first one. */
export const changes: Section = ({ changes: found }) => {
  if (!found) return null;
  const { before, says, levels, rules, cases, cases_read: read, over, not_settled: open } = found;
  return html`<section class="changes">
    <h2>Changes since edition ${before.edition}</h2>
    <p>${before.title}, edition ${before.edition}, ${shortDigest(before.digest)}. ${says}</p>
    ${list(open, 'Not settled')} ${levels.map(levelChange)} ${rules.map(ruleChange)}
    ${list(smallChanges(found), 'Names and limits')} ${wordTable(found.words)}
    ${
      read === 0
        ? null
        : list(
            cases.map((each) => `${each.case}: ${fromTo(each.before, each.after)}`),
            `${cases.length} of ${read} cases come out otherwise`,
          )
    }
    ${list(over, 'What this is about')}
  </section>`;
};

const fromTo = (before: string, after: string): string =>
  before === after ? after : `${before} before, ${after} now`;

const directions = { lower: 'Lower', higher: 'Higher', otherwise: 'Otherwise' } as const;

const levelChange = (level: ChangedLevel): Html =>
  html`<article>
    <h3>${directions[level.direction]}: “${level.before}” becomes “${level.after}”</h3>
    <p>${groundInWords(level.ground)}.</p>
    ${list(regionLines(level))} ${list(level.because, 'Because')}
    <p><b>For example:</b> ${level.witness.in_words}: ${fromTo(level.witness.before, level.witness.after)}</p>
  </article>`;

const ruleChange = (rule: ChangedRule): Html =>
  html`<article>
    <h3>Rule “${rule.title}”: ${ruleIsWords(rule)}</h3>
    ${list(rule.differences)}
    ${list(rule.stands.map((each) => `${fromTo(each.before, each.after)}: ${regionLines(each).join('; ')}`))}
  </article>`;

const smallChanges = ({ renamed, limits }: Comparison): string[] => [
  ...renamed.map(({ protocol, from, to }) => `${protocol}: ${from} is now ${to}, and asks the same`),
  ...limits.map(
    ({ limit, before, after }) => `${limit}: ${before ?? 'not there'} before; ${after ?? 'gone'} now`,
  ),
];

const wordTable = (words: readonly ChangedWords[]): Html | null =>
  words.length === 0
    ? null
    : html`<h3>Words, advice and answers</h3>
        <table>
          <thead>
            <tr>
              <th>Where</th>
              <th>Before</th>
              <th>Now</th>
            </tr>
          </thead>
          <tbody>
            ${words.map(
              ({ where, before, after }) =>
                html`<tr>
                  <th scope="row">${where}</th>
                  <td>${before ?? 'nothing'}</td>
                  <td>${after ?? 'nothing'}</td>
                </tr>`,
            )}
          </tbody>
        </table>`;
