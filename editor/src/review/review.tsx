import type { ReactNode } from 'react';
import { caution } from '../../../src/index.ts';
import { ProtocolChoice } from '../common/protocol-choice.tsx';
import { RoomHeading } from '../common/room-name.tsx';
import type { RoomProps } from '../common/room.ts';
import { Inside } from './inside.tsx';
import { chosenSides } from './sides/side-choices.ts';
import { SideFields } from './sides/side-fields.tsx';
import './review.css';

/** The room of the safety reviewer and the council: what a change changes, what must hold, and what is decided about it. */
export function Review(props: RoomProps): ReactNode {
  const { protocol, protocols, address, onGo } = props;
  const sides = chosenSides(protocol, address.sides);
  return (
    <>
      <header className="head">
        <RoomHeading
          room="review"
          protocol={protocol.id}
          purpose="See what a change changes before it reaches a patient, and decide about it."
        />
        <div className="head-fields">
          <ProtocolChoice
            label="Review"
            chosen={protocol.id}
            protocols={protocols}
            onChoose={(id) => onGo({ protocol: id, case: null, axes: null, sides: null })}
          />
          <SideFields protocol={protocol} {...sides} onSides={(chosen) => onGo({ sides: chosen })} />
        </div>
      </header>
      <main className="review">
        <Inside key={protocol.id} {...props} sides={sides} />
        <p className="review-caution">{caution}</p>
      </main>
    </>
  );
}
