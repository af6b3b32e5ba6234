import { insetSection } from '../../engine/mass/sectionInset';
import { fourDigitOutline, type SectionOutline } from '../../engine/mass/sectionOutline';
import type { AirfoilStation, SectionLoft } from '../../engine/mass/solid';
import { metresFromMm } from '../../engine/units';
import { readOwnSection } from './ownSection';
import type { BladeValues } from './parameters';

/**
 * The airfoil's shape in the blade's own frame (lag left out), metres. Chord, thickness and axis change evenly from where
 * the airfoil begins to the tip; outlines are joined straight, corner to fellow.
 */

/** Panels to a side of a four-digit outline: its area and moments are within 2e-5 of the curve's. */
const OUTER_PANELS = 48;
/** The hollow's own area is within 3e-5 of that of its curve, or 1e-3 where a section of few points has corners. */
const CORE_PANELS = 48;

export interface AirfoilEnds {
  readonly root: AirfoilStation;
  readonly tip: AirfoilStation;
}

export function airfoilEnds(values: BladeValues): AirfoilEnds {
  return {
    root: station(
      values,
      values.rootLengthMm,
      values.rootChordMm,
      values.rootThicknessPercent,
      values.rootSweepMm,
    ),
    tip: station(
      values,
      values.lengthMm,
      values.tipChordMm,
      values.tipThicknessPercent,
      values.sweepMm,
    ),
  };
}

function station(
  values: BladeValues,
  xMm: number,
  chordMm: number,
  percent: number,
  sweepMm: number,
): AirfoilStation {
  const chord = metresFromMm(chordMm);
  const leadingEdgeY = (values.axisPercent / 100) * chord - metresFromMm(sweepMm);
  return { x: metresFromMm(xMm), chord, thickness: (percent / 100) * chord, leadingEdgeY, z: 0 };
}

/** The section is the plain four-digit thickness without camber, whose loft has a closed form. */
export function isPlainSection(values: BladeValues): boolean {
  return values.sectionCoordinates.length === 0 && values.camberPercent === 0;
}

/** The section at one end, metres, from its leading edge. Own coordinates must be sound: throws where they are not. */
export function sectionOf(values: BladeValues, end: AirfoilStation): SectionOutline {
  if (values.sectionCoordinates.length > 0) {
    const own = readOwnSection(values.sectionCoordinates);
    if (!own.ok) throw new Error(`sectionOf(): own coordinates are not sound: ${own.error}`);
    const stretch = end.thickness / own.value.thickness;
    return own.value.outline.map((value, i) => (i % 2 === 0 ? end.chord : stretch) * value);
  }
  const section = {
    thickness: end.thickness / end.chord,
    camber: values.camberPercent / 100,
    position: values.camberPositionPercent / 100,
  };
  return fourDigitOutline(section, OUTER_PANELS).map((value) => end.chord * value);
}

function place(section: SectionOutline, end: AirfoilStation): SectionLoft['root'] {
  const corners = section.map((value, i) => (i % 2 === 0 ? end.leadingEdgeY - value : value));
  return { x: end.x, corners };
}

const outers = new WeakMap<BladeValues, SectionLoft>();
const cores = new WeakMap<BladeValues, { readonly loft: SectionLoft | null }>();

/** The airfoil as a loft between polygons. Remembered by the values' identity. */
export function outerLoft(values: BladeValues): SectionLoft {
  const known = outers.get(values);
  if (known) return known;
  const { root, tip } = airfoilEnds(values);
  const loft: SectionLoft = {
    shape: 'sectionLoft',
    root: place(sectionOf(values, root), root),
    tip: place(sectionOf(values, tip), tip),
  };
  outers.set(values, loft);
  return loft;
}

/**
 * What the skin leaves for the core: at both ends the section moved inward by the skin's thickness, joined straight.
 * Approximation: on the way from root to tip the skin is not of exactly even thickness. In an untapered blade it is; with
 * the chord halved and the same section the core's area at mid-span is 0.7 % below the evenly inset one's; with the chord
 * halved and a tip so thin that a third of its thickness is left to the core, 5 %.
 * Null where no core is left, or a side of the section turns back along the chord.
 */
export function coreLoft(values: BladeValues): SectionLoft | null {
  const known = cores.get(values);
  if (known) return known.loft;
  const skin = metresFromMm(values.skinThicknessMm);
  const { root, tip } = airfoilEnds(values);
  const [inRoot, inTip] = [root, tip].map((end) =>
    insetSection(sectionOf(values, end), skin, CORE_PANELS),
  );
  const loft: SectionLoft | null =
    inRoot && inTip
      ? { shape: 'sectionLoft', root: place(inRoot, root), tip: place(inTip, tip) }
      : null;
  cores.set(values, { loft });
  return loft;
}

/** The polygon at station x of a loft, corners (y, z). */
export function cornersAt(loft: SectionLoft, x: number): Float64Array {
  const t = (x - loft.root.x) / (loft.tip.x - loft.root.x);
  const b = loft.tip.corners;
  return loft.root.corners.map((value, i) => value + t * (b[i] - value));
}
