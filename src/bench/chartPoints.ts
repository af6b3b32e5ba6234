import { frictionForce } from '../engine/identify/benchDesign';
import { fittedOf } from '../engine/identify/benchFitTypes';
import { type BenchReading, restDragAt } from '../engine/identify/benchReading';
import { degreesFromRadians, type Radians, rpmFromAngularSpeed } from '../engine/units';
import type { BenchPoint } from '../state/benchPoints';
import type { BenchAnalysis, RungAnalysis } from './analysis';
import type { FittedHead } from './fitRung';
import { GaugeHead } from './gaugeHead';
import { splitRung, zerosOf } from './splitRung';

/**
 * The readings of the head as designed, reduced to moments at the design's speed: the mean of pull and push where a pitch was
 * read both ways, otherwise the reading less the fitted friction. Steps of the ladder are other heads and not among them;
 * nor is what was set aside. Empty without a fit.
 */
export function chartPoints({ rungs }: BenchAnalysis): readonly BenchPoint[] {
  const rung = rungs.find(({ rung: one }) => one.key === 'asDesigned');
  if (!rung?.fitted.ok) return [];
  const fitted = rung.fitted.value;
  const zeros = zerosOf(fitted.fit);
  const { rows, unpaired } = splitRung(rung, fitted);
  const lonely = new Set(unpaired);
  const point = pointOf(rung);
  const split = rows.map(({ pitch, angularSpeed, momentForce, momentSigma }) =>
    point(pitch, angularSpeed, momentForce, momentSigma),
  );
  const alone = rung.readings.flatMap((reading, i) => {
    if (reading.sense !== 0 && !lonely.has(i)) return [];
    const { pitch, angularSpeed, force, zero, sense } = reading;
    const net = force - (zeros[zero] ?? 0) - sense * rubbing(reading, rung, fitted);
    return [point(pitch, angularSpeed, net, fitted.fit.sigma[i])];
  });
  return [...split, ...alone].toSorted((a, b) => a.pitchDeg - b.pitchDeg);
}

/** Forces at the gauge as moments at the design's speed. At an arm the rod is off: its modelled share is added. */
function pointOf({ head }: RungAnalysis) {
  const whole = head.place.kind === 'arm' ? GaugeHead.of(head.design, { kind: 'rod' }) : null;
  return (pitch: Radians, speed: number, force: number, sigma: number): BenchPoint => {
    const per = head.forcePerMoment(pitch);
    const scale = (head.designSpeed / speed) ** 2;
    const { designSpeed } = head;
    const rod = whole?.ok
      ? whole.value.moment(pitch, designSpeed) - head.moment(pitch, designSpeed)
      : 0;
    return {
      pitchDeg: degreesFromRadians(pitch),
      moment: (scale * force) / per + rod,
      // Twice the standard uncertainty: about 95 %.
      half: Math.abs((scale * 2 * sigma) / per),
      speedRpm: rpmFromAngularSpeed(speed),
    };
  };
}

/** Fitted friction and drag at rest, N at the gauge, unsigned. */
function rubbing(reading: BenchReading, { setup }: RungAnalysis, { fit }: FittedHead): number {
  const { friction } = fittedOf(fit);
  return frictionForce(reading, setup, friction, restDragAt(setup.drag, reading.travel).force);
}
