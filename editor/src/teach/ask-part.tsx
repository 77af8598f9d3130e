import { useId, useState, type ReactNode } from 'react';

interface Props {
  readonly questions: readonly string[];
  readonly asks: readonly string[];
  readonly ownWords: string;
  readonly onAsks: (asks: readonly string[]) => void;
  readonly onOwnWords: (words: string) => void;
}

/** So many questions are shown at once; the field above them narrows them down. */
const most = 8;

/** What the learner would ask: in own words, or from the questions of the protocol. */
export function AskPart({ questions, asks, ownWords, onAsks, onOwnWords }: Props): ReactNode {
  const id = useId();
  return (
    <fieldset className="says">
      <legend>What would you ask?</legend>
      <label htmlFor={`${id}-own`} className="field-name">
        In your own words (not kept)
      </label>
      <textarea
        id={`${id}-own`}
        className="text-input"
        rows={2}
        autoComplete="off"
        maxLength={600}
        value={ownWords}
        onChange={(event) => onOwnWords(event.target.value)}
      />
      {questions.length > 0 && <FromList questions={questions} asks={asks} onAsks={onAsks} />}
    </fieldset>
  );
}

function FromList({ questions, asks, onAsks }: Pick<Props, 'questions' | 'asks' | 'onAsks'>): ReactNode {
  const id = useId();
  const [find, setFind] = useState('');
  const words = find.toLowerCase().split(/\s+/).filter(Boolean);
  const found = questions.filter((each) => words.every((word) => each.toLowerCase().includes(word)));
  const others = found.filter((each) => !asks.includes(each));
  const shown = [...asks, ...others.slice(0, most)];
  return (
    <details className="ask-list">
      <summary>{`Choose from the protocol’s questions${asks.length > 0 ? ` (${asks.length} chosen)` : ''}`}</summary>
      <label htmlFor={id} className="field-name">
        Find a question
      </label>
      <input
        id={id}
        className="text-input"
        autoComplete="off"
        placeholder="bleeding, infection…"
        value={find}
        onChange={(event) => setFind(event.target.value)}
      />
      {shown.map((question) => (
        <label key={question} className="say">
          <input
            type="checkbox"
            checked={asks.includes(question)}
            onChange={(event) =>
              onAsks(event.target.checked ? [...asks, question] : asks.filter((each) => each !== question))
            }
          />
          <span>{question}</span>
        </label>
      ))}
      <p className="hint">
        {others.length > most
          ? `${others.length - most} more: write a word of what you look for.`
          : `${found.length} of ${questions.length} questions.`}
      </p>
    </details>
  );
}
