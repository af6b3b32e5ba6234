import type { HELP_NONE as EN } from '../../en/help/none';

/** Why a quantity has no number here. */
export const HELP_NONE = {
  'help.none.parts': 'kein Teil mit Masse zählt mit.',
  'help.none.reach': 'die Steuerstange reicht bei diesem Einstellwinkel nicht hin.',
  'help.none.arm': 'der Kopf hat keinen Steuerhebel.',
  'help.none.overCentre': 'der Hebel steht bei diesem Einstellwinkel im Totpunkt.',
  'help.none.neverOverCentre': 'der Hebel geht innerhalb von ±90° nicht über den Totpunkt.',
  'help.none.servo': 'die Hebel von Umlenkhebel und Servo sind nicht angegeben.',
  'help.none.servoReach':
    'so weit können Umlenkhebel oder Servo bei diesem Einstellwinkel nicht schwenken.',
  'help.none.still': 'der Rotor steht still.',
  'help.none.neutral': 'der Kopf ist neutral: Er ruht bei jedem Einstellwinkel.',
  'help.none.rest': 'innerhalb von ±90° gibt es keine Ruhelage.',
  'help.none.flee': 'innerhalb von ±90° gibt es keine Kipplage.',
  'help.none.friction': 'Reibung zählt nicht mit, oder nichts gibt sie an.',
  'help.none.drag':
    'keine Reibung im Stand ist angegeben, oder bei diesem Einstellwinkel gibt es kein Gestänge.',
  'help.none.bearings': 'kein Lager ist gezeichnet.',
  'help.none.air': 'die Luft zählt nicht mit, oder kein Blatt ist gezeichnet.',
  'help.none.rod': 'keine Steuerstange ist gezeichnet, oder ihre Masse zählt nicht mit.',
  'help.none.lag': 'hier schwenkt kein Blatt auf seinem Bolzen, oder es ist geklemmt.',
  'help.none.bolt': 'in der Gabel sitzt kein Bolzen.',
  'help.none.limit': 'nichts ist belastet, oder keine Grenze ist bekannt.',
  'help.none.hub': 'die Masse der Nabe ist nicht angegeben, oder der Rotor steht still.',
  'help.none.gauge': 'der Anzeigeschritt des Kraftmessers ist nicht angegeben (Prüfstand, Plan).',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
