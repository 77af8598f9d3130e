import type { Action, Rule } from '../../protocol/protocol.ts';
import { html, type Html } from '../html.ts';
import { list, logic } from './logic.ts';
import { numbersOf } from './sources.ts';
import type { Part } from './section.ts';

/** Every rule of a protocol, the highest level first: its sentences, then its words. */
export function rulesOf(part: Part): Html {
  const { rules, ladder } = part.compiled.protocol;
  const groups = [...ladder.levels.keys()].toReversed().map((level) => ({
    title: ladder.levels[level]?.title ?? '',
    rules: rules.filter((rule) => rule.level === level),
  }));
  const saying = {
    title: 'Without a level: they only say something',
    rules: rules.filter(({ level }) => level === null),
  };
  return html`<h3>Rules</h3>
    ${[...groups, saying]
      .filter((group) => group.rules.length > 0)
      .map(
        (group) =>
          html`<h4 class="group">${group.title}</h4>
            ${group.rules.map((rule) => ruleOf(rule, part))}`,
      )}`;
}

function ruleOf(rule: Rule, part: Part): Html {
  const { name, title, says, because, ask, unless, explainedBy, from } = rule;
  const numbers = numbersOf(rule.sources, part);
  return html`<article class="rule">
    <h5>${title} <code>${name}</code></h5>
    ${logic(part.spoken.rules.get(name) ?? [])} ${says === null ? null : html`<p><b>It says:</b> ${says}</p>`}
    ${unless?.says ? html`<p><b>When it is taken back:</b> ${unless.says}</p>` : null}
    ${explainedBy ? html`<p><b>When it is explained:</b> ${explainedBy.says}</p>` : null}
    <p>
      <b>Why:</b> ${because ?? 'no reason is written down.'}
      ${
        numbers.length > 0
          ? html`<span class="cites">Sources ${numbers.join(', ')}.</span>`
          : html`<span class="cites">No source is named.</span>`
      }${from ? ` From ${from.name}, edition ${from.edition}.` : ''}
    </p>
    <div class="lists">
      <div>${list(ask, 'Ask')}</div>
      <div>${list(rule.do.map(actionOf), 'Do')}</div>
    </div>
  </article>`;
}

export const actionOf = ({ text, under }: Action): string => (under === null ? text : `${text} (${under})`);
