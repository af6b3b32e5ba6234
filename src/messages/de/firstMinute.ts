import type { FIRST_MINUTE as EN } from '../en/firstMinute';

/** Was man zuerst versuchen kann. */
export const FIRST_MINUTE = {
  'first.title': 'Drei Dinge zum Ausprobieren',
  'first.step.bolt': 'Den Bolzenkopf hinausziehen, bis das Urteil umschlägt.',
  'first.step.dial': 'Das Winkelbild auf 20° drehen und die Stangenkraft ablesen.',
  'first.step.find': 'Unter Ausgleichen suchen lassen, was sie aufhebt.',
  'first.show.bolt': 'Zeigt den Bolzen und seine Griffe',
  'first.show.dial': 'Geht zum Winkelbild',
  'first.show.find': 'Geht in den Raum Ausgleichen; dort Suchen drücken',
  'first.done': 'Getan: {step}',
  'first.toDo': 'Zu tun: {step}',
  'first.count': '{done} von {of} getan.',
  'first.all':
    'Das ist schon alles: Gewicht an der richtigen Stelle, und wie viel. Das Übrige steht unter Lernen.',
  'first.dismiss': 'Nicht mehr zeigen',
  'first.again': 'Erste Schritte wieder zeigen',
} satisfies Readonly<Record<keyof typeof EN, string>>;
