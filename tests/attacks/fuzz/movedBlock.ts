import { joined } from './bytes';

/** A GLB of our own with one number of its root's matrix put to something great: sheared, or moved far away. */
export function movedBlock(block: Uint8Array, place: number, value: number): Uint8Array {
  const size = new DataView(block.buffer, block.byteOffset).getUint32(12, true);
  const json = new TextDecoder().decode(block.subarray(20, 20 + size)).trimEnd();
  const turned = [1, 0, 0, 0, 0, 0, -1, 0, 0, 1, 0, 0, 0, 0, 0, 1];
  const bent = json.replace(JSON.stringify(turned), JSON.stringify(turned.with(place, value)));
  if (bent === json) throw new Error('the root has another matrix');
  const text = new TextEncoder().encode(bent.padEnd(4 * Math.ceil(bent.length / 4)));
  const head = block.slice(0, 20);
  const rest = block.subarray(20 + size);
  const view = new DataView(head.buffer);
  view.setUint32(8, 20 + text.length + rest.length, true);
  view.setUint32(12, text.length, true);
  return joined(head, text, rest);
}
