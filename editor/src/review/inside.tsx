import type { ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { Fault } from '../common/fault-boundary.tsx';
import type { RoomProps } from '../common/room.ts';
import { ChangesRoom } from './changes/changes-room.tsx';
import { partNamed, parts, type PartName } from './parts.ts';
import type { ChosenSides } from './sides/side-choices.ts';
import { TwoSides } from './sides/two-sides.tsx';
import { useReview, type Review } from './sides/use-review.ts';

interface Props extends RoomProps {
  readonly sides: ChosenSides;
}

/** All below the head: what is compared, and the parts of the review. */
export function Inside({ sides, ...props }: Props): ReactNode {
  const { protocol, protocols, address, onGo } = props;
  const review = useReview({ protocol, all: protocols, ...sides });
  if (review.kind === 'failed') return <Fault />;
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
            <Part part={name} review={review} />
          </TabPanel>
        ))}
      </Tabs>
    </>
  );
}

interface PartProps {
  readonly part: PartName;
  readonly review: Review;
}

function Part({ part, review }: PartProps): ReactNode {
  if (review.kind !== 'open') return <p className="waiting">Reading both sides…</p>;
  switch (part) {
    case 'changes':
      return <ChangesRoom review={review} />;
  }
}
