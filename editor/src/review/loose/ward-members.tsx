import type { ReactNode } from 'react';
import { writeAddress } from '../../common/address.ts';
import { nameOf } from '../../common/protocol-name.ts';
import type { Opening } from '../messages.ts';

/** A ward policy has no rules of its own: its loose ends are those of the protocols that it reads with. */
export function WardMembers({ opening: { protocol, all } }: { readonly opening: Opening }): ReactNode {
  const members = all.filter((each) => each.kind === 'protocol' && protocol.text.includes(nameOf(each)));
  return (
    <section className="panel empty">
      <h2>Loose ends are asked of one protocol</h2>
      <p>A ward policy has no rules of its own. Those that this one names:</p>
      <ul className="plain">
        {members.map(({ id, title }) => (
          <li key={id}>
            <a
              href={writeAddress({
                room: 'review',
                protocol: id,
                case: null,
                axes: null,
                sides: null,
                part: 'loose_ends',
              })}
            >
              {title}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
