import { useId, useState, type ReactNode } from 'react';
import {
  outputAndVessels,
  saidInWords,
  sayable,
  type OutputAndVessels,
  type SaidLevel,
} from '../../../src/index.ts';
import { AskPart } from './ask-part.tsx';
import type { PageLessons } from './messages.ts';

interface Props {
  readonly lessons: PageLessons;
  readonly onAnswer: (
    level: SaidLevel,
    output: OutputAndVessels | null,
    asks: readonly string[],
    ownWords: string,
  ) => void;
}

const outputs = Object.entries(outputAndVessels) as [OutputAndVessels, string][];

/** What the learner says: the level, what output and vessels are doing, and what to ask. Only the level has to be said. */
export function AnswerForm({ lessons, onAnswer }: Props): ReactNode {
  const [level, setLevel] = useState<SaidLevel | null>(null);
  const [output, setOutput] = useState<OutputAndVessels | null>(null);
  const [asks, setAsks] = useState<readonly string[]>([]);
  const [ownWords, setOwnWords] = useState('');
  const [isAskedFor, setAskedFor] = useState(false);
  return (
    <form
      className="panel answer-form"
      aria-label="What you say"
      onSubmit={(event) => {
        event.preventDefault();
        if (level === null) setAskedFor(true);
        else onAnswer(level, output, asks, ownWords);
      }}
    >
      <Choices
        heading="Which level does this call for?"
        options={sayable(lessons.ladder).map((said) => [said, saidInWords(said, lessons.ladder)])}
        chosen={level}
        onChoose={setLevel}
      />
      <Choices
        heading="What are output and vessels doing?"
        hint="Only if you want to. It is not counted."
        options={outputs}
        chosen={output}
        onChoose={setOutput}
      />
      <AskPart
        questions={lessons.questions}
        asks={asks}
        ownWords={ownWords}
        onAsks={setAsks}
        onOwnWords={setOwnWords}
      />
      {isAskedFor && level === null && (
        <p className="remark" role="alert">
          Say a level first; any of them. You learn more from a guess than from none.
        </p>
      )}
      <button type="submit" className="button button-strong">
        See what your ward’s rule says
      </button>
    </form>
  );
}

interface ChoicesProps<T extends string | number> {
  readonly heading: string;
  readonly hint?: string;
  readonly options: readonly (readonly [T, string])[];
  readonly chosen: T | null;
  readonly onChoose: (option: T) => void;
}

function Choices<T extends string | number>(props: ChoicesProps<T>): ReactNode {
  const { heading, hint, options, chosen, onChoose } = props;
  const id = useId();
  return (
    <fieldset className="says">
      <legend>{heading}</legend>
      {hint !== undefined && <p className="hint">{hint}</p>}
      {options.map(([option, words]) => (
        <label key={option} className="say">
          <input type="radio" name={id} checked={chosen === option} onChange={() => onChoose(option)} />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
