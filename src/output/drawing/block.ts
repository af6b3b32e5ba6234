import type { Box, Entity } from './sheetTypes';
import { textBox } from './textSize';

/** A box round entities, their texts included; an arc counts as its circle. */
export function boundsOf(entities: readonly Entity[]): Box {
  let box: Box = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };
  for (const one of entities) box = union(box, boxOf(one));
  return box;
}

function union(a: Box, b: Box): Box {
  return {
    x0: Math.min(a.x0, b.x0),
    y0: Math.min(a.y0, b.y0),
    x1: Math.max(a.x1, b.x1),
    y1: Math.max(a.y1, b.y1),
  };
}

export function boxOf(one: Entity): Box {
  if (one.shape === 'text') return textBox(one);
  if (one.shape === 'line') {
    return {
      x0: Math.min(one.x1, one.x2),
      y0: Math.min(one.y1, one.y2),
      x1: Math.max(one.x1, one.x2),
      y1: Math.max(one.y1, one.y2),
    };
  }
  if (one.shape === 'arrow') return { x0: one.x, y0: one.y, x1: one.x, y1: one.y };
  if (one.shape === 'arc') return arcBox(one);
  const { x, y, r } = one;
  return { x0: x - r, y0: y - r, x1: x + r, y1: y + r };
}

function arcBox({ x, y, r, from, to }: Extract<Entity, { shape: 'arc' }>): Box {
  const sweep = (((to - from) % 360) + 360) % 360;
  const passes = (angle: number) => (((angle - from) % 360) + 360) % 360 <= sweep;
  const at = (angle: number) => [
    x + r * Math.cos((angle * Math.PI) / 180),
    y + r * Math.sin((angle * Math.PI) / 180),
  ];
  const points = [from, to, ...[0, 90, 180, 270].filter(passes)].map(at);
  const [xs, ys] = [points.map((one) => one[0]), points.map((one) => one[1])];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}
