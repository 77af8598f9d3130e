import type { OutcomeParent } from '../shape/generated/types.ts';
import type { Parent } from '../protocol/protocol.ts';
import { stepsInJson, unitInJson } from './steps-in-json.ts';

/** A protocol that is adapted, with what the one that is based on it changes of it. */
export function parentToJson({ name, edition, title, digest, limits, withdrawn }: Parent): OutcomeParent {
  return {
    protocol: name,
    edition,
    title,
    digest,
    limits: limits.map(({ limit, insteadOf, because }) => ({
      limit: limit.name,
      value: stepsInJson(limit.value, limit),
      instead_of: stepsInJson(insteadOf.value, insteadOf),
      ...unitInJson(limit),
      because,
    })),
    withdrawn: withdrawn.map((rule) => ({ rule: rule.name, title: rule.title, because: rule.because })),
  };
}
