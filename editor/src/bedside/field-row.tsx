import { useId, type ReactNode } from 'react';
import type { Field } from '../../../src/index.ts';
import { sentence } from '../common/sentence.ts';
import { ChoiceField, SeveralField } from './choice-field.tsx';
import { whyNoNumber, type Entry } from './entries.ts';
import { NoValue, NoValueReason } from './no-value.tsx';
import { NumberField } from './number-field.tsx';

/** What is said of a value right under its field. */
export interface Remark {
  readonly kind: 'refused' | 'questioned' | 'note';
  readonly says: string;
}

export interface RowProps {
  readonly field: Field;
  readonly entry: Entry | null;
  readonly remarks: readonly Remark[];
  /** UCUM code. */
  readonly usualUnit: string;
  readonly onEnter: (entry: Entry | null) => void;
  readonly onUnit: (ucum: string) => void;
  readonly onTyping: (isTyping: boolean) => void;
  /** Whether the kinds of nothing are offered: what is needed can be not taken, unobtainable or declined. */
  readonly offersNothing: boolean;
}

const marks = { refused: 'Not used', questioned: 'Is it right?', note: '' } as const;

/** One observation: its name, where it is entered, the kinds of nothing, and what is to be said of it. */
export function FieldRow(props: RowProps): ReactNode {
  const { field, entry, offersNothing, onEnter } = props;
  const id = useId();
  const own = entry?.kind === 'number' ? whyNoNumber(entry.text) : null;
  const remarks: readonly Remark[] = own === null ? props.remarks : [{ kind: 'refused', says: own }];
  const title = sentence(field.title);
  const describedBy = remarks.length > 0 ? id : undefined;
  return (
    <div className={`row row-${field.kind}`} data-stop="" data-observation={field.name}>
      <span className="row-title" title={field.meaning ?? undefined}>
        {title}
      </span>
      <Value {...props} describedBy={describedBy} />
      {offersNothing && <NoValue title={title} entry={entry} onEnter={onEnter} />}
      <NoValueReason title={title} entry={entry} onEnter={onEnter} />
      {remarks.length > 0 && (
        <div id={id} className="remarks">
          {remarks.map(({ kind, says }, index) => (
            <p key={`${index} ${says}`} className={`remark remark-${kind}`}>
              {marks[kind] !== '' && <strong>{marks[kind]} </strong>}
              {sentence(says)}
            </p>
          ))}
        </div>
      )}
    </div>
  );
}

function Value(props: RowProps & { readonly describedBy: string | undefined }): ReactNode {
  const { field, offersNothing } = props;
  if (field.kind === 'number') return <NumberField {...props} lettersWork={offersNothing} />;
  if (field.kind === 'several') return <SeveralField {...props} />;
  return <ChoiceField {...props} canBeUnknown={!offersNothing} />;
}
