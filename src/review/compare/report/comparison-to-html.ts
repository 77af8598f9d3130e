import type {
  ChangedLevel,
  ChangedRule,
  ChangedStand,
  ChangedWords,
  ComparedSide,
  Comparison,
  LevelByExample,
  OtherLevels,
} from '../comparison.ts';
import { groundInWords, notWhole, othersInWords, regionLines, ruleIsWords } from '../comparison-in-words.ts';
import { html, Html } from '../../html.ts';
import { style } from './style.ts';

/** Nothing runs and nothing is fetched; the one style stands in the page. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** A comparison as one page that stands alone, to be read and printed. */
export function comparisonToHtml(comparison: Comparison): string {
  const { before, after, says, rules, words, cases } = comparison;
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${policy}" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>What changes: ${after.title}</title>
        <style>
          ${new Html(style)}
        </style>
      </head>
      <body>
        <h1>What changes: ${after.title}</h1>
        <table>
          <tr>
            <th></th>
            <th>Name</th>
            <th>Edition</th>
            <th>Digest</th>
          </tr>
          ${sideRow('Before', before)} ${sideRow('After', after)}
        </table>
        <p class="verdict">${says}</p>
        ${levelsPart('Sets that get another level', comparison)} ${othersPart(comparison.other_levels)}
        ${comparison.by_protocol.map(protocolPart)}
        ${
          rules.length > 0
            ? html`<h2>Rules</h2>
                ${rules.map(rulePart)}`
            : null
        }
        ${section(
          'Renamed, and asking the same',
          comparison.renamed.map(({ protocol, from, to }) => `${protocol}: ${from} is now ${to}`),
        )}
        ${section(
          'Limits',
          comparison.limits.map(
            ({ limit, before: was, after: is }) =>
              `${limit}: ${was ?? 'not there'} before; ${is ?? 'gone'} now`,
          ),
        )}
        ${wordsPart(words)}
        <h2>Cases: ${cases.length} of ${comparison.cases_read} come out otherwise</h2>
        ${cases.map(
          (each) =>
            html`<h3>${each.case}</h3>
              <p>${beforeAndNow(each.before, each.after)}</p>
              ${list(each.rules)}`,
        )}
        ${section('What this is about', comparison.over)} ${section('Not settled', comparison.not_settled)}
        <p class="caution">${comparison.caution}</p>
      </body>
    </html> `.text;
}

const sideRow = (label: string, { name, edition, digest }: ComparedSide): Html =>
  html`<tr>
    <th>${label}</th>
    <td>${name}</td>
    <td>${edition}</td>
    <td><code>${digest}</code></td>
  </tr>`;

const list = (items: readonly string[]): Html | null =>
  items.length === 0
    ? null
    : html`<ul>
        ${items.map((each) => html`<li>${each}</li>`)}
      </ul>`;

const section = (title: string, items: readonly string[]): Html | null =>
  items.length === 0
    ? null
    : html`<h2>${title}</h2>
        ${list(items)}`;

const beforeAndNow = (before: string, after: string): string =>
  before === after ? `${after}, as before` : `${before} before, ${after} now`;

const directions = { lower: 'Lower', higher: 'Higher', otherwise: 'Otherwise' } as const;

function levelsPart(
  title: string,
  { levels, levels_whole: whole }: Pick<Comparison, 'levels' | 'levels_whole'>,
): Html | null {
  if (levels.length === 0 && whole) return null;
  return html`<h2>${title}</h2>
    ${whole ? null : html`<p>${notWhole}</p>`} ${levels.map(levelPart)}`;
}

const protocolPart = (each: Comparison['by_protocol'][number]): Html =>
  html`${
    levelsPart(`${each.protocol} by itself: sets that get another level from it`, each) ??
    html`<h2>${each.protocol} by itself: no complete set gets another level from it</h2>`
  }
  ${othersPart(each.other_levels)}`;

function othersPart(others: OtherLevels | null): Html | null {
  if (!others) return null;
  return html`${exampleTable('Other changes of level', othersInWords.complete, others.complete)}
  ${exampleTable('While something is missing', othersInWords.incomplete, others.incomplete)}
  ${others.whole ? html`<p>${othersInWords.whole}</p>` : null}`;
}

function exampleTable(title: string, says: string, changes: readonly LevelByExample[]): Html | null {
  if (changes.length === 0) return null;
  return html`<h3>${title}</h3>
    <p>${says}</p>
    <table>
      <tr>
        <th></th>
        <th>Before</th>
        <th>Now</th>
        <th>For example</th>
      </tr>
      ${changes.map(
        ({ direction, before, after, witness }) =>
          html`<tr>
            <td>${directions[direction]}</td>
            <td>${before}</td>
            <td>${after}</td>
            <td>${witness.in_words}</td>
          </tr>`,
      )}
    </table>`;
}

const levelPart = (level: ChangedLevel): Html =>
  html`<div class="change ${level.direction}">
    <h3>${directions[level.direction]}: ${level.before} becomes ${level.after}</h3>
    ${regionPart(level)}
    <p>Because of:</p>
    ${list(level.because)}
    <p>For a patient in the middle of a series:</p>
    ${list(level.course)}
  </div>`;

const rulePart = (rule: ChangedRule): Html =>
  html`<div class="change otherwise">
    <h3>${rule.title} (${rule.protocol}, ${rule.rule}): ${ruleIsWords(rule)}</h3>
    ${list(rule.differences)}
    ${rule.stands.map(
      (stand) =>
        html`<p><b>${stand.before} before, ${stand.after} now</b></p>
          ${regionPart(stand)}`,
    )}
  </div>`;

const regionPart = (of: ChangedLevel | ChangedStand): Html =>
  html`<p>${groundInWords(of.ground)}</p>
    ${list(regionLines(of))}
    <p>For example: ${of.witness.in_words}. ${beforeAndNow(of.witness.before, of.witness.after)}.</p>`;

const kinds = { response: 'How a level is answered', advice: 'Advice', words: 'Words' } as const;

function wordsPart(words: readonly ChangedWords[]): Html | null {
  if (words.length === 0) return null;
  return html`<h2>Changed, with no other outcome</h2>
    <table>
      <tr>
        <th>What</th>
        <th>Where</th>
        <th>Before</th>
        <th>Now</th>
      </tr>
      ${words.map(
        ({ kind, where, before, after }) =>
          html`<tr>
            <td>${kinds[kind]}</td>
            <td>${where}</td>
            <td>${before ?? 'nothing'}</td>
            <td>${after ?? 'nothing'}</td>
          </tr>`,
      )}
    </table>`;
}
