import type { ReactNode } from 'react';
import type { ConditionWords, HandoutPart, HandoutRule } from '../../../src/index.ts';
import { keyed } from '../common/keyed.ts';
import { sentence } from '../common/sentence.ts';

interface Props {
  readonly part: HandoutPart;
  /** Whether the handout is of this protocol alone, so that its title stands above already. */
  readonly isAlone: boolean;
}

/** The rules of a protocol with their reasons, the highest level first, and its sources by number. */
export function HandoutRules({ part, isAlone }: Props): ReactNode {
  return (
    <section>
      <h3>{isAlone ? 'Rules, and their reasons' : `Rules of: ${part.title}`}</h3>
      {!isAlone && <p>{part.edition}</p>}
      {part.forWhom && (
        <div className="handout-for">
          <strong>For whom:</strong> <Condition words={part.forWhom} />
          {part.otherwise !== null && <p>{part.otherwise}</p>}
        </div>
      )}
      {part.rules.map((rule) => (
        <Rule key={`${rule.title} ${rule.says ?? ''}`} rule={rule} />
      ))}
      <Measures measures={part.measures} />
      {part.sources.length > 0 && (
        <>
          <h4>Sources</h4>
          <ol className="handout-sources">
            {keyed(part.sources).map(({ key, line }) => (
              <li key={key}>{line}</li>
            ))}
          </ol>
        </>
      )}
    </section>
  );
}

/** Numbers that the rules read and how they are worked out. */
function Measures({ measures }: Pick<HandoutPart, 'measures'>): ReactNode {
  if (measures.length === 0) return null;
  return (
    <>
      <h4>Numbers that are worked out</h4>
      {measures.map(({ title, meaning, lines }) => (
        <div key={title} className="handout-rule">
          <p>
            <strong>{sentence(title)}</strong>
            {meaning !== null && `. ${meaning}`}
          </p>
          {keyed(lines).map(({ key, line }) => (
            <p key={key}>{sentence(line)}</p>
          ))}
        </div>
      ))}
    </>
  );
}

function Rule({ rule }: { readonly rule: HandoutRule }): ReactNode {
  const { title, level, when, unless, explained, says, because, ask, sources } = rule;
  return (
    <div className="handout-rule">
      <h4>
        {title}
        <span className="handout-level">{level ?? 'only says'}</span>
      </h4>
      <div>
        <strong>When:</strong> <Condition words={when} />
      </div>
      {unless && (
        <div>
          <strong>Unless:</strong> <Condition words={unless} />
        </div>
      )}
      {explained && (
        <div>
          <strong>Explained when:</strong> <Condition words={explained.when} /> {explained.says}
        </div>
      )}
      {says !== null && <p>{says}</p>}
      {because !== null && (
        <p>
          <strong>Why:</strong> {because}
        </p>
      )}
      {ask.length > 0 && (
        <p>
          <strong>Ask:</strong> {ask.join(' ')}
        </p>
      )}
      {sources.length > 0 && <p className="handout-cited">{`Sources: ${sources.join(', ')}`}</p>}
    </div>
  );
}

/** A condition: one sentence, or a heading with what it holds together below it. */
function Condition({ words: { text, of } }: { readonly words: ConditionWords }): ReactNode {
  if (of.length === 0) return <span>{sentence(text)}</span>;
  return (
    <>
      <span>{sentence(text)}:</span>
      <ul className="handout-condition">
        {of.map((each, index) => (
          <li key={`${index} ${each.text}`}>
            <Condition words={each} />
          </li>
        ))}
      </ul>
    </>
  );
}
