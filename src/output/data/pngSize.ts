import { withChunk } from '../../state/carried/pngDesign';

/**
 * The PNG with its size on paper in it (chunk pHYs, PNG specification 11.3.5.3): pixels a metre, both ways. What browsers
 * write has none. Bytes that are no PNG come back as they are.
 */
export function withDensity(png: Uint8Array, pixelsPerMetre: number): Uint8Array {
  const data = new Uint8Array(9);
  const view = new DataView(data.buffer);
  view.setUint32(0, Math.round(pixelsPerMetre));
  view.setUint32(4, Math.round(pixelsPerMetre));
  data[8] = 1;
  return withChunk(png, 'pHYs', data);
}
