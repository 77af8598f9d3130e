import type { StoredDraft } from '../../../../src/index.ts';
import { digestOf } from '../../common/save.ts';
import type { Site, SiteText } from '../../common/site-protocol.ts';

/**
 * The files that are not as they were when the results were worked out: changed, or gone; by the names that problems cite them by. Of none
 * the results hold.
 */
export function filesThatDiffer({ of }: StoredDraft, texts: readonly SiteText[]): readonly string[] {
  const here = new Map(texts.map(({ file, text }) => [file, text]));
  return of.flatMap(({ file, digest }) => {
    const text = here.get(file);
    return text !== undefined && digestOf(text) === digest ? [] : [file];
  });
}

/** Whether the results are those of the list of texts that they came with. */
export const isOfItsTexts = ({ digest, of }: StoredDraft): boolean => digestOf(JSON.stringify(of)) === digest;

/** Every text that stands beside a page; sealed editions are fetched one by one. */
export const textsBeside = ({ protocols, ladders }: Site): readonly SiteText[] => [
  ...protocols.flatMap((each) => [
    { file: each.file, text: each.text },
    ...(each.ladder ? [each.ladder] : []),
    ...(each.cases ? [each.cases] : []),
  ]),
  ...ladders,
];
