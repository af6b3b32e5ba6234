import { createMoments, M, SZ } from '../../engine/mass/moments';
import { threadRootDiameter, threadStressArea, unifiedStressArea } from '../../engine/mass/thread';
import { sumSolids } from '../../engine/mass/weigh';
import { metresFromMm } from '../../engine/units';
import type { FastenerFacts } from '../facts';
import { isUnified } from '../threadTable';
import type { BoltValues } from './parameters';
import { unthreadedMm } from './problems';
import { headAndExtension } from './solids';

const remembered = new WeakMap<BoltValues, FastenerFacts>();

/** What a bolt's loads are worked out from. Remembered by the values' identity. */
export function boltFacts(values: BoltValues): FastenerFacts {
  const known = remembered.get(values);
  if (known) return known;
  const diameter = metresFromMm(values.shankDiameterMm);
  const pitch = metresFromMm(values.threadPitchMm);
  const unified = isUnified(values.shankDiameterMm, values.threadPitchMm);
  // A dragged bolt is asked for its diameter with every picture, and for this seldom.
  let head: Head | undefined;
  const headOnce = () => (head ??= headOf(values));
  const bare = values.headForm === 'none' ? 0 : values.headHeightMm;
  const facts: FastenerFacts = {
    nominalDiameter: diameter,
    threadPitch: pitch,
    stressArea: (unified ? unifiedStressArea : threadStressArea)(diameter, pitch),
    rootDiameter: threadRootDiameter(diameter, pitch),
    threadFrom: metresFromMm(Math.max(0, unthreadedMm(values) - values.threadRunOutMm)),
    end: metresFromMm(values.lengthMm),
    headHeight: metresFromMm(bare + values.extensionLengthMm),
    get headMass() {
      return headOnce().mass;
    },
    get headCentre() {
      return headOnce().centre;
    },
    strengthClass: values.propertyClass === 'unknown' ? null : values.propertyClass,
  };
  remembered.set(values, facts);
  return facts;
}

/** Head with extension: kg, and the height of its centre of mass over the seat, m. */
interface Head {
  readonly mass: number;
  readonly centre: number;
}

function headOf(values: BoltValues): Head {
  const solids = headAndExtension(values);
  if (solids.length === 0) return { mass: 0, centre: 0 };
  const moments = sumSolids(solids, createMoments());
  return { mass: moments[M], centre: moments[SZ] / moments[M] };
}
