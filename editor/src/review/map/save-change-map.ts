import type { ChangedPlane } from '../../../../src/index.ts';
import { download } from '../../common/download.ts';
import type { Drawing } from '../../common/map/draw-plane.ts';
import { exportSvg, shortDigest } from '../../common/map/export-svg.ts';
import { frameOf } from '../../common/map/frame.ts';

/** Gives what changes as a picture that stands alone, named by both editions. */
export function saveChangeMap(plane: ChangedPlane, drawing: Drawing): void {
  const { name, title, edition } = plane.protocol;
  const { edition: was, digest } = plane.was.protocol;
  const from = `edition ${was} (${shortDigest(digest)})`;
  const named = {
    ...plane,
    protocol: { ...plane.protocol, title: `${title}: what changes from ${from} to edition ${edition}` },
  };
  const serializer = new XMLSerializer();
  const svg = exportSvg({ ...drawing, plane: named, frame: frameOf(plane, false) }, document, (element) =>
    serializer.serializeToString(element),
  );
  download(`${name}-${was}-${edition}-changes.svg`, svg, document);
}
