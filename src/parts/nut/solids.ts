import type { Outline, Solid } from '../../engine/mass/solid';
import { threadMeanRadius } from '../../engine/mass/thread';
import { metresFromMm } from '../../engine/units';
import { circle, hexagon, prism } from '../shapes';
import type { NutValues } from './parameters';

/**
 * Body, collar and closed end, one after the other along z from the clamped face. The thread is a bore of the mean
 * section of the ISO 68-1 profile (`threadMeanRadius`). The closed end is as wide as what it closes: the collar, or
 * the body where there is none. Left out: chamfers (a common M3 nut comes out up to 2 % heavy).
 */
export function nutSolids(values: NutValues): Solid[] {
  const density = values.densityKgM3;
  const across = metresFromMm(values.acrossMm);
  const diameter = metresFromMm(values.threadDiameterMm);
  const bore = circle(threadMeanRadius(diameter, metresFromMm(values.threadPitchMm)));
  const bodyEnd = metresFromMm(values.heightMm);
  const threadEnd = metresFromMm(values.heightMm + values.collarHeightMm);
  let outer: Outline = values.form === 'hex' ? hexagon(across) : circle(across / 2);
  const solids: Solid[] = [prism('body', density, { outer, holes: [bore], from: 0, to: bodyEnd })];
  if (values.collarHeightMm > 0) {
    outer = circle(metresFromMm(values.collarDiameterMm) / 2);
    solids.push(prism('collar', density, { outer, holes: [bore], from: bodyEnd, to: threadEnd }));
  }
  if (values.closedEndMm > 0) {
    const to = threadEnd + metresFromMm(values.closedEndMm);
    solids.push(prism('closed end', density, { outer, from: threadEnd, to }));
  }
  return solids;
}
