import { planeOf } from '../../review/cells/plane-of.ts';
import { teacherOf } from '../../teach/teacher.ts';
import { html, type Html } from '../html.ts';
import { mapPicture } from '../map/picture.ts';
import type { Part } from './section.ts';

/** The exact map of the first two numbers of a protocol, everything else held; or the sentence why there is none. */
export function mapOf({ compiled }: Part): Html {
  const ground = teacherOf(compiled, null).map(null);
  if (!ground || 'why' in ground)
    return html`<h3>Map</h3>
      <p>${ground?.why ?? ''}</p>`;
  const plane = planeOf(ground.compiled, ground);
  return html`<section class="map-page">
    <h3>Map: ${plane.x.title} and ${plane.y.title}</h3>
    <p>
      Every point is what the rules say with everything else held: ${plane.held.join('; ')}. Other values give
      another map.
    </p>
    ${mapPicture(plane, `map-${plane.protocol.name}`)}
  </section>`;
}
