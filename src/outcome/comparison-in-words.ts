import type { ChoiceComparison, Comparison, FactComparison } from '../protocol/protocol.ts';
import { choiceValue } from './choice-in-words.ts';
import type { Wording } from './wording.ts';
import { numberTeller } from './number-comparison-in-words.ts';
import { askedChoice, sentences } from './sentences.ts';
import type { Tell } from './tell.ts';
import { lacks, type View } from './view.ts';

/** The sentence of one comparison; what does not change from set to set is worked out once. */
export function comparisonTeller(
  comparison: Comparison,
  wording: Wording,
  how: (measure: string) => (view: View) => string,
): Tell {
  switch (comparison.kind) {
    case 'compare':
      return numberTeller(comparison, wording, how);
    case 'one_of':
      return choiceTeller(comparison, wording);
    default:
      return factTeller(comparison, wording);
  }
}

function choiceTeller({ observation: name, choices }: ChoiceComparison, wording: Wording): Tell {
  const observation = wording.protocol.observations.get(name);
  if (!observation) throw new Error(`no observation is called ${name}`);
  const places = wording.choices(name);
  const titles = choices.map(
    (each) => observation.choices.find(({ choice }) => choice === each)?.title ?? each,
  );
  const several = observation.kind === 'several';
  const [held, failed] = [askedChoice(titles, several, true), askedChoice(titles, several, false)];
  return (view, { holds, wanted, asker }) => {
    const subject = observation.title;
    const asked = asker && { asker, what: wanted ? held : failed };
    if (holds === null) return sentences.notKnown({ subject, asked });
    return sentences.choice({ subject, ...choiceValue(observation, places, view), asked });
  };
}

function factTeller({ observation: name, kind, is }: FactComparison, { protocol }: Wording): Tell {
  const subject = protocol.observations.get(name)?.title ?? name;
  return ({ facts }, { holds }) => {
    const fact = holds === is;
    const present = facts.present.get(name);
    if (kind === 'known') return sentences.known({ subject, known: fact });
    const because = lacks(present) ? (present?.note ?? null) : null;
    return sentences.unobtainable({ subject, unobtainable: fact, because });
  };
}
