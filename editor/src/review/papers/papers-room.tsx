import type { ReactNode } from 'react';
import { withOffset } from '../../common/clock.ts';
import { fetchEdition } from '../../common/fetch-edition.ts';
import type { SiteText } from '../../common/site-protocol.ts';
import { newHelper } from '../ask.ts';
import type { Opening, SideHere } from '../messages.ts';
import type { Review } from '../sides/use-review.ts';
import { PaperCard } from './paper-card.tsx';
import { usePaper, type Making } from './use-paper.ts';

type OpenSide = Extract<SideHere, { kind: 'open' }>;

interface Props {
  readonly review: Extract<Review, { kind: 'open' }>;
  readonly after: OpenSide;
}

/** What the council reads on paper: what changes, and the handbook. Both are made here, as the command line makes them. */
export function PapersRoom({ review, after }: Props): ReactNode {
  const { helper, opening, changes, before } = review;
  const report = usePaper(opening, () => ({
    html: helper.ask<'report'>({ kind: 'report' }).then(({ html }) => html),
    // What is compared is asked of the same worker, which goes on.
    end: () => undefined,
  }));
  const handbook = usePaper(opening, () => handbookOf(opening, after));
  const { name, edition } = after;
  const canReport = changes !== null && changes !== 'comparing' && before?.kind === 'open';
  return (
    <div className="papers-room">
      {canReport && (
        <PaperCard
          title="Report of what changes"
          about={`From edition ${before.edition} to ${sideWords(after)}: every change with its regions, examples and cause, and what happens on the day.`}
          file={`${name}-${before.edition}-${edition}-changes.html`}
          paper={report}
        />
      )}
      <PaperCard
        title="Handbook"
        about={`Of ${sideWords(after)}: the rules as sentences that read back, the ladder, the cases, what must hold and what was accepted. Its requirements are proven while it is made.`}
        file={`${name}-${after.isSealed ? edition : 'draft'}-handbook.html`}
        paper={handbook}
      />
    </div>
  );
}

const sideWords = ({ edition, isSealed }: OpenSide): string =>
  isSealed ? `edition ${edition}` : `the draft of edition ${edition}`;

function handbookOf(opening: Opening, after: OpenSide): Making {
  const helper = newHelper();
  const make = async (): Promise<string> => {
    const last = await sealedBefore(opening, after);
    await helper.ask<'open'>({ ...opening, before: null });
    const { html } = await helper.ask<'handbook'>({ kind: 'handbook', last, now: withOffset(new Date()) });
    return html;
  };
  return { html: make(), end: () => helper.end() };
}

/** The last edition that says something else: of a sealed one, the one with the next lower number. */
async function sealedBefore(
  { protocol: { editions = [] } }: Opening,
  { edition, digest }: OpenSide,
): Promise<SiteText | null> {
  const found = editions.findLast((each) => each.edition <= edition && each.digest !== digest);
  return found ? { file: found.file, text: await fetchEdition(found.address) } : null;
}
