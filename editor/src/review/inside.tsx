import { useState, type ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { Fault } from '../common/fault-boundary.tsx';
import type { RoomProps } from '../common/room.ts';
import { ChangesRoom } from './changes/changes-room.tsx';
import { Decide } from './decide/decide.tsx';
import { Stored } from './decide/stored.tsx';
import { HoldRoom } from './hold/hold-room.tsx';
import { LooseRoom } from './loose/loose-room.tsx';
import { MapLater } from './map/map-later.tsx';
import { PapersRoom } from './papers/papers-room.tsx';
import { partNamed, parts, type PartName } from './parts.ts';
import { NotCompared } from './sides/not-compared.tsx';
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
  const [at, setAt] = useState(0);
  const shown = partNamed(address.part);
  const opened = useOpened(shown);
  return (
    <>
      <Stored protocol={protocol} site={site} />
      {review.kind === 'open' && <TwoSides before={review.before} after={review.after} />}
      <Tabs
        className="review-tabs"
        selectedKey={shown}
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
              opened.has(name) && (
                <Part part={name} review={review} address={address} onGo={onGo} at={at} onWalk={setAt} />
              )
            )}
          </TabPanel>
        ))}
      </Tabs>
    </>
  );
}

/** The parts that were looked at: they stay, so that nothing that took long is lost by a look elsewhere. */
function useOpened(shown: PartName): ReadonlySet<PartName> {
  const [opened, setOpened] = useState<ReadonlySet<PartName>>(new Set([shown]));
  if (!opened.has(shown)) setOpened(new Set([...opened, shown]));
  return opened;
}

interface PartProps extends Pick<RoomProps, 'address' | 'onGo'> {
  readonly part: Exclude<PartName, 'decide'>;
  readonly review: Review;
  readonly at: number;
  readonly onWalk: (at: number) => void;
}

function Part({ part, review, address, onGo, ...walk }: PartProps): ReactNode {
  if (review.kind === 'failed') return <Fault />;
  if (review.kind !== 'open') return <p className="waiting">Reading both sides…</p>;
  const { helper, changes, after } = review;
  switch (part) {
    case 'changes':
      return <ChangesRoom review={review} {...walk} />;
    case 'map':
      if (changes === null || changes === 'comparing') return <NotCompared review={review} />;
      return (
        <MapLater
          helper={helper}
          changes={changes}
          axes={address.axes}
          onAxes={(axes) => onGo({ axes })}
          {...walk}
        />
      );
    case 'must_hold':
      return after.kind === 'open' ? (
        <HoldRoom opening={review.opening} requirements={after.requirements} />
      ) : (
        <NotCompared review={review} />
      );
    case 'loose_ends':
      return <LooseRoom opening={review.opening} />;
    case 'papers':
      return after.kind === 'open' ? (
        <PapersRoom review={review} after={after} />
      ) : (
        <NotCompared review={review} />
      );
  }
}
