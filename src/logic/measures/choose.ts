import Fraction from 'fraction.js';
import type { Measure, MeasureHow } from '../../protocol/protocol.ts';
import { isConstant, ofNode, one, scaled, type Linear, type Node, type Ratio } from '../linear.ts';
import { commonScale } from '../arithmetic.ts';
import { and, either, highest, lowest, not, or, type Logical } from '../operators.ts';
import { ofSeveral, type NumberForm, type Presence } from '../number-form.ts';
import type { Context } from '../context.ts';
import { stepName } from '../logic.ts';
import { inQuantity } from './formula.ts';

/** A number that may be the value, and whether it still may. */
interface Alternative {
  readonly form: NumberForm;
  readonly reached: Logical;
}

/** The first entry whose condition holds: the hull over all that may be the first. */
export function chooseForm(
  how: Extract<MeasureHow, { kind: 'choose' }>,
  measure: Measure,
  context: Context,
): NumberForm {
  const owner = stepName(measure.path);
  let free: Logical = true;
  const unsettled: Presence[] = [];
  const alternatives = how.entries.map(({ when, use }, index): Alternative => {
    const form = context.form(use);
    if (!when) return { form, reached: free };
    const rails = context.rails(when);
    const open = and(rails.possible, not(rails.certain));
    const { helpsMissing, needsOpen, helpsOpen, known } = rails.presence;
    unsettled.push({
      sure: true,
      maybe: true,
      helpsMissing: and(open, helpsMissing),
      needsOpen: and(open, needsOpen),
      helpsOpen: and(open, helpsOpen),
      known,
    });
    const reached = context.writer.define(`${owner}/choose/${index}:reached`, and(free, rails.possible));
    free = context.writer.define(`${owner}/choose/${index}:passed`, and(free, not(rails.certain)));
    return { form, reached };
  });
  const presence = hullPresence(alternatives, unsettled);
  const known = and(
    ...alternatives.map(({ form }) => form.presence.known),
    ...unsettled.map((each) => each.known),
  );
  return hull(alternatives, { ...presence, known }, owner, context);
}

/** The first that is known; when none is, the hull of all that can have a value. */
export function firstKnownForm(
  how: Extract<MeasureHow, { kind: 'first_known' }>,
  measure: Measure,
  context: Context,
): NumberForm {
  const owner = stepName(measure.path);
  const forms = how.of.map((operand) => context.form(operand));
  const none = context.writer.define(
    `${owner}:none_known`,
    not(or(...forms.map(({ presence }) => presence.known))),
  );
  let free: Logical = true;
  const alternatives = forms.map((form, index): Alternative => {
    const chosen = and(free, form.presence.known);
    free = context.writer.define(`${owner}/first_known/${index}:passed`, and(free, not(form.presence.known)));
    return {
      form,
      reached: context.writer.define(
        `${owner}/first_known/${index}:reached`,
        or(chosen, and(none, form.presence.maybe)),
      ),
    };
  });
  const presence = hullPresence(alternatives, []);
  const someSure = or(...forms.map((form) => form.presence.sure));
  const sure = and(presence.sure, or(not(none), someSure));
  return hull(alternatives, { ...presence, sure, known: not(none) }, owner, context);
}

function hullPresence(alternatives: readonly Alternative[], more: readonly Presence[]): Presence {
  const from = (key: 'maybe' | 'helpsMissing' | 'needsOpen' | 'helpsOpen'): Logical[] =>
    alternatives.map(({ form, reached }) => and(reached, form.presence[key]));
  const helpsOpen = or(...from('helpsOpen'), ...more.map((each) => each.helpsOpen));
  return {
    sure: and(...alternatives.map(({ form, reached }) => or(not(reached), form.presence.sure))),
    maybe: or(...from('maybe')),
    helpsMissing: or(...from('helpsMissing'), ...more.map((each) => each.helpsMissing)),
    needsOpen: or(
      ...from('needsOpen'),
      ...more.map((each) => each.needsOpen),
      ofSeveral([...alternatives.map(({ form }) => form.presence), ...more], helpsOpen),
    ),
    helpsOpen,
    known: true,
  };
}

function hull(
  alternatives: readonly Alternative[],
  presence: Presence,
  owner: string,
  context: Context,
): NumberForm {
  const quantity = alternatives.map(({ form }) => form.quantity).find((each) => each !== 'plain') ?? 'plain';
  const ratios = alternatives.map(({ form, reached }) => ({
    ratio: plainBottom(inQuantity(form, quantity)),
    reached: and(reached, form.presence.maybe),
  }));
  const top = side(
    ratios.map(({ ratio, reached }) => ({ linear: ratio.top, reached })),
    `${owner}/value`,
    context,
  );
  const bottoms = ratios.map(({ ratio, reached }) => ({ linear: ratio.bottom, reached }));
  const simple = bottoms.every(({ linear }) => isConstant(linear));
  const bottom = simple
    ? (ratios[0] as { ratio: Ratio }).ratio.bottom
    : side(bottoms, `${owner}/bottom`, context);
  return { ratio: { top, bottom }, quantity, presence };
}

/** A constant bottom moved into the top, so that quotients by numbers meet over 1. */
function plainBottom({ top, bottom }: Ratio): Ratio {
  if (!isConstant(bottom)) return { top, bottom };
  return { top: scaled(top, bottom.constant.inverse()), bottom: one };
}

function side(
  parts: readonly { linear: Linear; reached: Logical }[],
  owner: string,
  context: Context,
): Linear {
  const { writer, arithmetic } = context;
  const singles = parts.map(({ linear }) => arithmetic.oneNode(linear, owner));
  const scale = commonScale(singles.flatMap(({ factor, rest }) => [factor, rest]));
  const nodes = parts.map(({ linear }, index) =>
    arithmetic.wholeNode(linear, scale, `${owner}/${index}`, owner),
  );
  const least = nodes.reduce((a, { least: b }) => (b < a ? b : a), (nodes[0] as Node).least);
  const most = nodes.reduce((a, { most: b }) => (b > a ? b : a), (nodes[0] as Node).most);
  const end = (join: typeof lowest, key: 'low' | 'high', otherwise: bigint): Logical =>
    join(
      nodes.map((node, index) =>
        either((parts[index] as { reached: Logical }).reached, node[key], Number(otherwise)),
      ),
    );
  const low = writer.define(`${owner}:low`, end(lowest, 'low', most));
  const high = writer.define(`${owner}:high`, end(highest, 'high', least));
  return ofNode(writer.node({ name: owner, low, high, least, most }, owner, nodes), new Fraction(scale));
}
