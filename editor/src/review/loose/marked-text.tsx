import { useEffect, useRef, type ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import type { LooseEnd } from './loose-here.ts';

interface Props {
  readonly file: string;
  readonly text: string;
  readonly ends: readonly LooseEnd[];
  readonly chosen: LooseEnd | null;
  readonly onChoose: (end: LooseEnd) => void;
}

/** The text of the draft with its lines numbered; a line with loose ends says how many, and leads to the first of them. */
export function MarkedText({ file, text, ends, chosen, onChoose }: Props): ReactNode {
  const here = useRef<HTMLLIElement>(null);
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!here.current || !box.current) return;
    box.current.scrollTop = here.current.offsetTop - box.current.clientHeight / 3;
    // Where the text stands below the list, whoever asked for a line goes there.
    box.current.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  return (
    <section className="marked-text" aria-label={`The text of ${file}`}>
      <h3>{file}</h3>
      <div ref={box} className="text-box" tabIndex={0} role="region" aria-label={`Lines of ${file}`}>
        <ol>
          {keyed(text.split(/\r?\n/)).map(({ key, line }, index) => {
            const number = index + 1;
            const marks = ends.filter((end) => end.line === number);
            const isHere = chosen?.line === number;
            return (
              <li key={key} ref={isHere ? here : undefined} data-here={isHere} data-marked={marks.length > 0}>
                <span className="line-number">{number}</span>
                <Mark marks={marks} onChoose={onChoose} />
                <code>{line === '' ? ' ' : line}</code>
              </li>
            );
          })}
        </ol>
      </div>
    </section>
  );
}

function Mark({
  marks,
  onChoose,
}: {
  readonly marks: readonly LooseEnd[];
  readonly onChoose: Props['onChoose'];
}): ReactNode {
  const [first] = marks.toSorted((left, right) => Number(right.isOpen) - Number(left.isOpen));
  if (!first) return <span className="line-mark" />;
  const open = marks.filter(({ isOpen }) => isOpen).length;
  return (
    <button
      type="button"
      className="line-mark"
      data-open={open > 0}
      aria-label={`Line ${first.line}: ${marks.length} loose ends, ${open} to be answered`}
      onClick={() => onChoose(first)}
    >
      {marks.length}
    </button>
  );
}
