import { useId, type ReactNode } from 'react';
import type { Field, Form, LimitField } from '../../../src/index.ts';
import { fromField, toField } from '../common/clock.ts';
import { sentence } from '../common/sentence.ts';
import { TypedLine } from '../common/typed-field.tsx';
import { noStatement, type Statement, type Statements } from './entries.ts';
import type { Entering } from './entry-form.tsx';
import { FieldRow } from './field-row.tsx';
import { NumberField } from './number-field.tsx';

interface Props extends Entering {
  readonly form: Form;
  readonly facts: Statements;
  readonly limits: Statements;
  readonly onState: (what: 'facts' | 'limits', name: string, change: Partial<Statement>) => void;
}

/** What is known of the patient and holds until it is changed: age, pregnancy, standing facts, changed limits. */
export function PatientPart(props: Props): ReactNode {
  const { form, facts, limits } = props;
  const atOnce = form.patient.filter(({ setBy }) => setBy === null);
  const stated = form.patient.filter(({ setBy }) => setBy !== null);
  const count = [...Object.values(facts), ...Object.values(limits)].filter(
    ({ entry, by }) => entry && by !== '',
  ).length;
  if (form.patient.length + form.limits.length === 0) return null;
  return (
    <section className="part patient" aria-label="About the patient">
      <h2 className="part-heading">About the patient</h2>
      {atOnce.map((field) => (
        <Fact key={field.name} {...props} field={field} />
      ))}
      {stated.length + form.limits.length > 0 && (
        <details className="stated">
          <summary>
            Stated by a prescriber: standing facts and limits{' '}
            <span className="count">{count === 0 ? 'none stated' : `${count} stated`}</span>
          </summary>
          {stated.map((field) => (
            <Fact key={field.name} {...props} field={field} />
          ))}
          {form.limits.map((limit) => (
            <Limit key={limit.name} {...props} limit={limit} />
          ))}
        </details>
      )}
    </section>
  );
}

function Fact({ field, facts, onState, ...entering }: Props & { readonly field: Field }): ReactNode {
  const fact = facts[field.name] ?? noStatement;
  return (
    <>
      <FieldRow
        field={field}
        entry={fact.entry}
        remarks={entering.remarksOf(field.name)}
        usualUnit={entering.usualUnit(field)}
        offersNothing={false}
        onEnter={(entry) => onState('facts', field.name, { entry })}
        onUnit={(ucum) => entering.onUnit(field, ucum)}
        onTyping={entering.onTyping}
      />
      {field.setBy !== null && fact.entry === null && field.ifNotStated !== null && (
        <p className="hint fact-hint">{`While nobody has stated it, it counts as ${field.ifNotStated}.`}</p>
      )}
      {field.setBy !== null && fact.entry !== null && (
        <WhoAndUntil
          title={field.title}
          setBy={field.setBy}
          statement={fact}
          onChange={(change) => onState('facts', field.name, change)}
        />
      )}
    </>
  );
}

function Limit({
  limit,
  limits,
  onState,
  remarksOf,
  onTyping,
}: Props & { readonly limit: LimitField }): ReactNode {
  const statement = limits[limit.name] ?? noStatement;
  const unit = limit.unit?.ucum ?? '';
  const remarks = remarksOf(limit.name);
  return (
    <div className="limit">
      <div className="row row-number" data-stop="" data-observation={limit.name}>
        <span className="row-title">{sentence(limit.title)}</span>
        <NumberField
          field={{
            name: limit.name,
            title: limit.title,
            units: limit.unit ? [limit.unit] : [],
            isWhole: false,
          }}
          entry={statement.entry}
          usualUnit={unit}
          describedBy={undefined}
          lettersWork={false}
          onEnter={(entry) => onState('limits', limit.name, { entry })}
          onUnit={() => undefined}
          onTyping={onTyping}
        />
        <span className="hint">{`${limit.value} for everybody; for one patient ${limit.between}`}</span>
        {remarks.length > 0 && (
          <div className="remarks">
            {remarks.map(({ says }, index) => (
              <p key={`${index} ${says}`} className="remark remark-refused">
                <strong>Not used </strong>
                {sentence(says)}
              </p>
            ))}
          </div>
        )}
      </div>
      {statement.entry !== null && (
        <WhoAndUntil
          title={limit.title}
          setBy={limit.setBy ?? 'prescriber'}
          statement={statement}
          onChange={(change) => onState('limits', limit.name, change)}
        />
      )}
    </div>
  );
}

interface WhoProps {
  readonly title: string;
  readonly setBy: string;
  readonly statement: Statement;
  readonly onChange: (change: Partial<Statement>) => void;
}

function WhoAndUntil({ title, setBy, statement, onChange }: WhoProps): ReactNode {
  const id = useId();
  const isMissing = statement.by.trim() === '';
  return (
    <div className="who">
      <div data-stop="">
        <label htmlFor={`${id}-by`}>{`Who stated it (${setBy})`}</label>
        <TypedLine
          id={`${id}-by`}
          className="text-input"
          autoComplete="off"
          maxLength={80}
          aria-describedby={isMissing ? `${id}-wants` : undefined}
          value={statement.by}
          onType={(by) => onChange({ by })}
        />
      </div>
      <div data-stop="">
        <label htmlFor={`${id}-why`}>Why</label>
        <TypedLine
          id={`${id}-why`}
          className="text-input"
          autoComplete="off"
          maxLength={120}
          value={statement.reason}
          onType={(reason) => onChange({ reason })}
        />
      </div>
      <div>
        <label htmlFor={`${id}-until`}>Until when</label>
        <input
          id={`${id}-until`}
          className="text-input"
          type="datetime-local"
          aria-label={`${sentence(title)}: until when`}
          value={toField(statement.until)}
          onChange={(event) => onChange({ until: fromField(event.target.value) ?? '' })}
        />
      </div>
      {isMissing && (
        <p id={`${id}-wants`} className="remark remark-refused">
          <strong>Not used yet </strong>
          {`It counts once it is said who stated it.`}
        </p>
      )}
    </div>
  );
}
