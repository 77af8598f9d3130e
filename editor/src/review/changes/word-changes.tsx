import type { ReactNode } from 'react';
import type { WordChange } from './changes-here.ts';

const kinds = { response: 'How a level is answered', advice: 'Advice', words: 'Words' } as const;

/** What is worded, advised or answered otherwise, with no other outcome: apart from what changes for a patient. */
export function WordChanges({ words }: { readonly words: readonly WordChange[] }): ReactNode {
  if (words.length === 0) return null;
  return (
    <section className="panel word-changes">
      <h3>Worded otherwise, with no other outcome</h3>
      {(['response', 'advice', 'words'] as const).map((kind) => (
        <WordsOf key={kind} heading={kinds[kind]} words={words.filter((each) => each.kind === kind)} />
      ))}
    </section>
  );
}

interface Props {
  readonly heading: string;
  readonly words: readonly WordChange[];
}

function WordsOf({ heading, words }: Props): ReactNode {
  if (words.length === 0) return null;
  return (
    <>
      <h4>{heading}</h4>
      <dl className="word-list">
        {words.map(({ where, before, after }) => (
          <div key={where}>
            <dt>{where}</dt>
            <dd>
              <span className="word-when">Before</span>
              {before ?? 'nothing'}
            </dd>
            <dd>
              <span className="word-when">Now</span>
              {after ?? 'nothing'}
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
}
