import type { Compiled } from '../../outcome/compile.ts';
import { requirementKey } from '../../protocol/requirements/requirement.ts';
import { plainWords } from '../../protocol/words.ts';
import type { Ward } from '../../ward/ward.ts';

/** A requirement as it is stated, before anybody asks whether it holds. */
export interface StatedRequirement {
  /** Its own among all that is asked of the file, also where its ladder states one of the same name. */
  readonly name: string;
  readonly title: string;
  readonly because: string | null;
  /** What it keeps from happening, with how bad that would be and who answers for it. */
  readonly controls: readonly { readonly harm: string; readonly severity: string; readonly owner: string }[];
}

/** All that a protocol or a ward policy states must always hold, in the order of the file. */
export function requirementsOf(asked: Compiled | Ward): readonly StatedRequirement[] {
  const { hazards, requirements } = 'members' in asked ? asked : asked.protocol;
  return requirements.map(({ title, because, controls, ...named }) => ({
    name: requirementKey(named),
    title,
    because,
    controls: controls.flatMap((hazard) => {
      const found = hazards.get(hazard);
      return found ? [{ harm: found.harm, severity: plainWords(found.severity), owner: found.owner }] : [];
    }),
  }));
}
