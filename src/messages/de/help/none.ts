import type { HELP_NONE as EN } from '../../en/help/none';

/** Why a quantity has no number here. */
export const HELP_NONE = {
  'help.none.parts': 'Kein Teil mit Masse zählt mit.',
  'help.none.reach': 'Die Steuerstange reicht bei diesem Einstellwinkel nicht hin.',
  'help.none.arm': 'Der Kopf hat keinen Steuerhebel.',
  'help.none.overCentre': 'Der Hebel steht bei diesem Einstellwinkel im Totpunkt.',
  'help.none.neverOverCentre': 'Der Hebel geht innerhalb von ±90° nicht über den Totpunkt.',
  'help.none.servo': 'Die Hebel von Umlenkhebel und Servo sind nicht angegeben.',
  'help.none.servoReach':
    'So weit können Umlenkhebel oder Servo bei diesem Einstellwinkel nicht schwenken.',
  'help.none.still': 'Der Rotor steht still.',
  'help.none.neutral': 'Der Kopf ist neutral: Er ruht bei jedem Einstellwinkel.',
  'help.none.rest': 'Innerhalb von ±90° gibt es keine Ruhelage.',
  'help.none.flee': 'Innerhalb von ±90° gibt es keine Kipplage.',
  'help.none.friction': 'Reibung zählt nicht mit, oder nichts gibt sie an.',
  'help.none.drag':
    'Keine Reibung im Stand ist angegeben, oder bei diesem Einstellwinkel gibt es kein Gestänge.',
  'help.none.bearings': 'Kein Lager ist gezeichnet.',
  'help.none.air': 'Die Luft zählt nicht mit, oder kein Blatt ist gezeichnet.',
  'help.none.rod': 'Keine Steuerstange ist gezeichnet, oder ihre Masse zählt nicht mit.',
  'help.none.lag': 'Hier schwenkt kein Blatt auf seinem Bolzen, oder es ist geklemmt.',
  'help.none.bolt': 'In der Gabel sitzt kein Bolzen.',
  'help.none.limit': 'Nichts ist belastet, oder keine Grenze ist bekannt.',
  'help.none.hub': 'Die Masse der Nabe ist nicht angegeben, oder der Rotor steht still.',
  'help.none.gauge': 'Der Anzeigeschritt des Kraftmessers ist nicht angegeben (Prüfstand, Plan).',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
