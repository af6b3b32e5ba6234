import type { HELP_HOLDING as EN } from '../../en/help/holding';

/** Entries: friction, and where it keeps the grip. */
export const HELP_HOLDING = {
  'help.friction.name': 'Reibung',
  'help.friction.what':
    'Was das Drehen eines Blatthalters hemmt: sein Anteil an der Reibung des Gestänges und die Reibung seiner belasteten Lager. Gegen das Moment zu drehen braucht Moment plus Reibung; auf dem Rückweg ist nur Moment minus Reibung zu spüren. Hier im Stand und in Bewegung gleich groß (Coulomb), der Anlauffaktor eingeschlossen. Ein Rotor rüttelt, und Rütteln mindert Reibung: Was hier knapp gehalten wird, kann im Flug wandern.',
  'help.friction.sign': 'Ein Betrag: Sie wirkt gegen jede Drehrichtung des Blatthalters.',
  'help.dragAtRest.name': 'Reibung im Stand',
  'help.dragAtRest.what':
    'Die Kraft, die den Schieber bei stehendem Rotor gerade bewegt, für den ganzen Kopf. Gemessen über dem Schieberweg; an den Enden ist sie größer. Etwa 0,3 bis 0,6 N bei einem kleinen Gestänge (übliche Praxis).',
  'help.dragAtRest.sign': 'Ein Betrag.',
  'help.bearingFriction.name': 'Lagerreibung',
  'help.bearingFriction.what':
    'Für jedes Lager die Hälfte von Beiwert mal Last mal Durchmesser, mal Anlauffaktor, wenn es anlaufen muss. Das Axiallager trägt die Fliehkraft, darum wächst sie mit dem Quadrat der Drehzahl.',
  'help.bearingFriction.sign': 'Ein Betrag.',
  'help.holdingBand.name': 'Haltebereich',
  'help.holdingBand.what':
    'Die Einstellwinkel, bei denen die Reibung mindestens so groß ist wie das Moment: Dort losgelassen, bleibt der Blatthalter stehen. Im Winkelbild als Bögen gezeichnet. Gezeigt ist, was die Reibung bei diesem Winkel übrig hat.',
  'help.holdingBand.sign': 'Positiv: etwas übrig, er wird hier gehalten. Negativ: Er bewegt sich.',
  'help.holdingBand.formula': '|M| ≤ M_f',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
