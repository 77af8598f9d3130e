import { useEffect, useState, type ReactNode } from 'react';
import type { editor } from '../text-field/monaco.ts';

interface Props {
  readonly model: editor.ITextModel;
}

/** The whole text on paper: the field itself only ever draws the lines that are in sight. */
export function PrintedText({ model }: Props): ReactNode {
  const [text, setText] = useState<string | null>(null);
  useEffect(() => {
    const before = (): void => setText(model.getValue());
    const after = (): void => setText(null);
    addEventListener('beforeprint', before);
    addEventListener('afterprint', after);
    return () => {
      removeEventListener('beforeprint', before);
      removeEventListener('afterprint', after);
    };
  }, [model]);
  return text === null ? null : <pre className="print-text">{text}</pre>;
}
