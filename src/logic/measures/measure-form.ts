import type { Measure } from '../../protocol/protocol.ts';
import type { Context } from '../context.ts';
import { scaled } from '../linear.ts';
import { stepName } from '../logic.ts';
import type { NumberForm, Presence } from '../number-form.ts';
import { chooseForm, firstKnownForm } from './choose.ts';
import { curveForm } from './curve.ts';
import { formulaForm } from './formula.ts';
import { lookBackForm } from './look-back.ts';
import { scoreForm } from './score.ts';

/** A measure as a number in its own unit, with what it lacks as steps of its own. */
export function measureForm(measure: Measure, context: Context): NumberForm {
  const made = inOwnUnit(measure, byKind(measure, context));
  return { ...made, presence: asSteps(stepName(measure.path), made.presence, context) };
}

function byKind(measure: Measure, context: Context): NumberForm {
  const { how } = measure;
  switch (how.kind) {
    case 'formula':
      return formulaForm(how.formula, measure, context);
    case 'curve':
      return curveForm(how, measure, context);
    case 'score':
      return scoreForm(how, measure, context);
    case 'choose':
      return chooseForm(how, measure, context);
    case 'first_known':
      return firstKnownForm(how, measure, context);
    default:
      return lookBackForm(how, measure, context.protocol);
  }
}

/** A number brought into the unit that its measure declares. */
function inOwnUnit(measure: Measure, form: NumberForm): NumberForm {
  if (form.quantity === 'plain') return { ...form, quantity: measure.quantity };
  const factor = form.quantity.factor.div(measure.quantity.factor);
  return {
    ...form,
    ratio: { top: scaled(form.ratio.top, factor), bottom: form.ratio.bottom },
    quantity: measure.quantity,
  };
}

/** What a measure lacks as steps of its own, so that whatever reads it stays small. */
function asSteps(owner: string, presence: Presence, { writer }: Context): Presence {
  return {
    sure: writer.define(`${owner}:sure`, presence.sure),
    maybe: writer.define(`${owner}:maybe`, presence.maybe),
    helpsMissing: writer.define(`${owner}:helps_missing`, presence.helpsMissing),
    needsOpen: writer.define(`${owner}:needs_open`, presence.needsOpen),
    helpsOpen: writer.define(`${owner}:helps_open`, presence.helpsOpen),
    known: writer.define(`${owner}:known`, presence.known),
  };
}
