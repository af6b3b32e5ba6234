import type { TopicId } from '../../state/help/topics';

/** Fields whose number is a quantity of the help, by the key of the field. */
const FIELD_TOPICS: Readonly<Record<string, TopicId>> = {
  speedRpm: 'speed',
  torqueOffsetMm: 'torqueOffset',
  preconeDeg: 'precone',
  usedPitchDeg: 'pitchInUse',
  overspeedPercent: 'firstLimit',
  hubMassGrams: 'balanceGrade',
  balanceHubMass: 'balanceGrade',
  lowestTravelMm: 'sliderTravel',
  highestTravelMm: 'sliderTravel',
  servoTorqueNmm: 'servoTorque',
  servoMargin: 'servoTorque',
  startingFactor: 'bearingFriction',
  frictionCoefficient: 'bearingFriction',
  clampForceN: 'boltStrength',
  massGrams: 'mass',
  boltStationMm: 'station',
  chordMm: 'chord',
  spanMm: 'span',
};

export function fieldTopic(key: string): TopicId | null {
  return Object.hasOwn(FIELD_TOPICS, key) ? FIELD_TOPICS[key] : null;
}
