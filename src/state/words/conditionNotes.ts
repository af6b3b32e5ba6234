import { mmFromMetres, radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { displayForce, displayMoment, fixed, show, showDegrees, significant } from '../quantities';
import type { HeadReading } from '../reading';
import type { DisplayUnits } from '../settings';
import { displayPosition } from '../shownUnits';

/** What follows from a group's numbers, in short sentences; none for a group that says it all itself. */
export function notesFor(topic: string, reading: HeadReading, units: DisplayUnits): string[] {
  switch (topic) {
    case 'conditions':
      return airDensity(reading);
    case 'slider':
      return sliderNotes(reading, units);
    case 'servo':
      return servoNotes(reading, units);
    case 'friction':
      return frictionNotes(reading, units);
    case 'air':
      return airNotes(reading, units);
    case 'bladeBolt':
      return lagNotes(reading, units);
    default:
      return [];
  }
}

function airDensity({ air }: HeadReading): string[] {
  if (air.kind !== 'estimated') return [];
  return [t('notes.density', { density: significant(air.density) })];
}

function sliderNotes(reading: HeadReading, units: DisplayUnits): string[] {
  const { linkage, usedPitchDeg: used } = reading;
  if (!linkage) return [t('notes.noArm')];
  if (!linkage.ends) return [t('notes.noReach')];
  const travel = (pitch: number) => {
    const metres = linkage.travelAt(pitch);
    return Number.isNaN(metres) ? t('notes.none') : displayPosition(metres, units);
  };
  const perDegree = mmFromMetres(linkage.ratioAt(0)) * radiansFromDegrees(1);
  const lines = [
    t('notes.travel', { used, low: travel(-used), high: travel(used), unit: units.length }),
    t('notes.ratio', { ratio: fixed(perDegree, 3) }),
  ];
  for (const end of [linkage.ends.low, linkage.ends.high]) {
    if (end.why !== 'open') lines.push(t(`notes.end.${end.why}`, { angle: showDegrees(end.deg) }));
  }
  if (linkage.rodPart === null) lines.push(t('notes.parallel'));
  return lines;
}

function servoNotes(reading: HeadReading, units: DisplayUnits): string[] {
  if (!reading.linkage?.hasServo) return [t('notes.servoNone')];
  const steps = 8;
  let rated: number | null = null;
  let wanted = 1;
  let lost = false;
  for (let i = -steps; i <= steps; i++) {
    const servo = reading.servoAt((reading.usedPitchDeg * i) / steps);
    lost ||= servo.kind === 'outOfReach';
    if (servo.kind === 'holds') ({ rated, wanted } = servo);
  }
  const held = reading.friction.counted && reading.friction.known;
  const worst = worstServoTorque(reading, held);
  const torque = show(displayMoment(worst, units));
  const lines = [t(held ? 'notes.servoTorqueHeld' : 'notes.servoTorque', { torque })];
  if (lost) lines.push(t('notes.servoReach'));
  else if (rated === null) lines.push(t('notes.servoUnrated'));
  else if (worst > 0) {
    const margin = rated / worst;
    const key = margin >= wanted ? 'notes.servoEnough' : 'notes.servoWeak';
    lines.push(t(key, { margin: significant(margin, 2), wanted: significant(wanted, 2) }));
  }
  return lines;
}

/** Largest torque over the samples of the pitch in use, N m; with `held`, to move against friction as well. */
function worstServoTorque({ curve, usedPitchDeg }: HeadReading, held: boolean): number {
  let worst = 0;
  for (let i = 0; i < curve.pitchDeg.length; i++) {
    if (Math.abs(curve.pitchDeg[i]) > usedPitchDeg) continue;
    const moment = Math.abs(curve.moment[i]) + (held ? curve.friction[i] : 0);
    worst = Math.max(worst, moment * Math.abs(curve.servoPerMoment[i]) || 0);
  }
  return worst;
}

function frictionNotes(reading: HeadReading, units: DisplayUnits): string[] {
  const { friction, usedPitchDeg: used } = reading;
  if (!friction.counted) return [t('notes.notCounted')];
  if (!friction.known) return [t('notes.frictionUnknown')];
  const at = (pitch: number) => {
    const moment = friction.at(pitch);
    const force = reading.forceOf(moment, pitch);
    return force === null
      ? show(displayMoment(moment, units))
      : show(displayForce(Math.abs(force), units));
  };
  const lines = [t('notes.friction', { flat: at(0), end: at(used), used })];
  if (friction.beyondTable) lines.push(t('notes.beyondTable'));
  return lines;
}

function airNotes(reading: HeadReading, units: DisplayUnits): string[] {
  const { air, usedPitchDeg: used } = reading;
  if (air.kind !== 'estimated') return [t(`notes.air.${air.kind}`)];
  const pitch = radiansFromDegrees(used);
  const thrust = air.table.thrust(pitch);
  const torque = air.table.torque(pitch);
  const lines = [
    t('notes.thrust', {
      used,
      thrust: show(displayForce(thrust, units)),
      torque: show(displayMoment(torque, units)),
      power: significant(torque * reading.rotor.angularSpeed),
    }),
    t('notes.estimate'),
  ];
  if (air.table.gaps > 0) lines.push(t('notes.airGaps', { count: air.table.gaps }));
  if (air.camber > 0.002 && air.section.name.includes('symmetric')) lines.push(t('notes.camber'));
  return lines;
}

function lagNotes(reading: HeadReading, units: DisplayUnits): string[] {
  const { usedPitchDeg: used } = reading;
  const flat = reading.lagAt(0);
  const end = reading.lagAt(used);
  if (!flat || !end) return [t('notes.noHinge')];
  const band = flat.bandDeg
    ? t('notes.lagBand', { low: showDegrees(flat.bandDeg[0]), high: showDegrees(flat.bandDeg[1]) })
    : t('notes.lagAnywhere');
  return [
    t(`notes.lag.${flat.hold}`, {
      flat: showDegrees(flat.freeDeg, 2),
      end: showDegrees(end.freeDeg, 2),
      used,
    }),
    band,
    ...(reading.bladeSlipsDeg() === null ? [] : [t('notes.lagSlips')]),
    t('notes.lagMoment', { moment: show(displayMoment(end.moment, units)), used }),
  ];
}
