import type { SiteProtocol } from '../../common/site-protocol.ts';

/** Something that can stand on a side of the comparison. */
export interface SideChoice {
  /** As the address names it: the number of an edition, or `draft`. */
  readonly name: string;
  readonly label: string;
}

const draft: SideChoice = { name: 'draft', label: 'Draft in the folder' };

/** All that can be compared, the oldest first and the draft last. */
export function sideChoices({ editions = [], record }: SiteProtocol): readonly SideChoice[] {
  const inForce = record?.in_force?.edition;
  const sealed = editions.map(({ edition }) => ({
    name: String(edition),
    label: edition === inForce ? `Edition ${edition}, in force` : `Edition ${edition}, sealed`,
  }));
  return [...sealed, draft];
}

/** What is compared with what: what the address says, as far as it is there; else what is in force, or was sealed last, with the draft. */
export interface ChosenSides {
  /** Null: nothing was sealed that the draft could be compared with. */
  readonly before: string | null;
  readonly after: string;
}

export function chosenSides(protocol: SiteProtocol, asked: readonly [string, string] | null): ChosenSides {
  const choices = sideChoices(protocol).map(({ name }) => name);
  const there = (name: string | undefined): string | null =>
    name !== undefined && choices.includes(name) ? name : null;
  const inForce = there(String(protocol.record?.in_force?.edition));
  const sealed = choices.filter((name) => name !== draft.name);
  return {
    before: there(asked?.[0]) ?? inForce ?? sealed.at(-1) ?? null,
    after: there(asked?.[1]) ?? draft.name,
  };
}
