import { degreesFromRadians, mmFromMetres, rpmFromAngularSpeed } from '../../../engine/units';
import {
  displayForce,
  displayMoment,
  fixed,
  show,
  showDegrees,
  significant,
} from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import type { BenchRun } from '../../readings/benchSection';
import type { Reading } from '../../readings/types';
import { countedReadings } from '../../runReadings';
import { say } from '../../say';

/** "12 readings, 10200 rpm, 2 set aside". */
export function runLine(run: BenchRun): string {
  const read = countedReadings(run).readings;
  const aside = run.setAside?.length ?? 0;
  return [
    read.ok
      ? say('benchRoom.readingsCount', { count: read.value.length })
      : say('benchRoom.unreadable'),
    ...(run.speedRpm === undefined ? [] : [`${fixed(run.speedRpm, 0)}\u00a0rpm`]),
    ...(aside === 0 ? [] : [say('benchRoom.asideCount', { count: aside })]),
  ].join(', ');
}

/** A reading in the units that the page shows. */
export function readingText(reading: Reading, units: DisplayUnits) {
  const { pitch, scale, force, moment, travel, speed, time } = reading;
  return {
    pitch: pitch === null ? '' : showDegrees(degreesFromRadians(pitch), 2),
    scale: scale === null ? '' : significant(mmFromMetres(scale), 5),
    load:
      force !== null
        ? `${show(displayForce(force, units))} ${senseText(force)}`
        : moment !== null
          ? show(displayMoment(moment, units))
          : '',
    travel: travel === null ? '' : say(`benchRoom.travel.${travel}`),
    speed: speed === null ? '' : `${fixed(rpmFromAngularSpeed(speed), 0)}\u00a0rpm`,
    time: time === null ? '' : `${significant(time, 4)}\u00a0s`,
  };
}

function senseText(force: number): string {
  if (force === 0) return '';
  return force > 0 ? say('benchRoom.tension') : say('benchRoom.compression');
}
