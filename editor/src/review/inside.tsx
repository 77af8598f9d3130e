import type { ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { Fault } from '../common/fault-boundary.tsx';
import type { RoomProps } from '../common/room.ts';
import { ChangesRoom } from './changes/changes-room.tsx';
import { Decide } from './decide/decide.tsx';
import { partNamed, parts, type PartName } from './parts.ts';
import type { ChosenSides } from './sides/side-choices.ts';
import { TwoSides } from './sides/two-sides.tsx';
import { useReview, type Review } from './sides/use-review.ts';

interface Props extends RoomProps {
  readonly sides: ChosenSides;
}

/** All below the head: what is compared, and the parts of the review. */
export function Inside({ sides, ...props }: Props): ReactNode {
  const { protocol, protocols, site, address, onGo, onSaved } = props;
  const review = useReview({ protocol, all: protocols, ...sides });
  return (
    <>
      {review.kind === 'open' && <TwoSides before={review.before} after={review.after} />}
      <Tabs
        className="review-tabs"
        selectedKey={partNamed(address.part)}
        onSelectionChange={(part) => onGo({ part: String(part) })}
      >
        <TabList className="tab-list" aria-label="Parts of the review">
          {parts.map(({ name, title }) => (
            <Tab key={name} id={name} className="tab">
              {title}
            </Tab>
          ))}
        </TabList>
        {parts.map(({ name }) => (
          <TabPanel key={name} id={name} shouldForceMount className="tab-panel">
            {name === 'decide' ? (
              // Whatever becomes of a comparison, a policy can be withdrawn.
              <Decide protocol={protocol} site={site} onSaved={onSaved} />
            ) : (
              <Part part={name} review={review} />
            )}
          </TabPanel>
        ))}
      </Tabs>
    </>
  );
}

interface PartProps {
  readonly part: Exclude<PartName, 'decide'>;
  readonly review: Review;
}

function Part({ part, review }: PartProps): ReactNode {
  if (review.kind === 'failed') return <Fault />;
  if (review.kind !== 'open') return <p className="waiting">Reading both sides…</p>;
  switch (part) {
    case 'changes':
      return <ChangesRoom review={review} />;
  }
}
