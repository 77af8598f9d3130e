import { proveRequirements, type Compiled } from '../../../../src/index.ts';
import type { RequirementHere, RequirementsHere } from '../messages.ts';

/** So long, in milliseconds, is looked for answers to all of them while one writes; what is then open is left to the command line. */
const longest = 1000;

const none: RequirementsHere = { answers: [], took: 0 };

/** Proves what a protocol states must always hold; again only when the logic or what is asked is another one. */
export class RequirementAnswers {
  #key = '';
  #last = none;

  of(compiled: Compiled | null): RequirementsHere {
    const { protocol } = compiled ?? {};
    if (!compiled || !protocol || protocol.requirements.length === 0) return none;
    const key = keyOf(compiled);
    if (key !== this.#key) {
      const start = performance.now();
      const end = start + longest;
      const proofs = proveRequirements(compiled, { cancelled: () => performance.now() > end });
      const answers = proofs.map((proof): RequirementHere => ({
        name: proof.requirement.name,
        title: proof.requirement.title,
        verdict: proof.verdict,
        says: proof.verdict === 'refuted' ? proof.example.says : null,
      }));
      this.#last = { answers, took: performance.now() - start };
      // What was cut short for want of time is asked again.
      this.#key = performance.now() > end ? '' : key;
    }
    return this.#last;
  }
}

/** What the answers depend on: all that decides an outcome, and what is asked, with the titles under which it is told. */
const keyOf = ({ protocol }: Compiled): string =>
  `${protocol.logicDigest} ${JSON.stringify(protocol.requirements, (_, value: unknown) =>
    typeof value === 'bigint' ? String(value) : value,
  )}`;
