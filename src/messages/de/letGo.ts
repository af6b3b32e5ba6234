import type { LET_GO as EN } from '../en/letGo';

export const LET_GO = {
  'letGo.letGo': 'Loslassen',
  'letGo.letGoHelp': 'Den Blatthalter bei diesem Winkel loslassen, in gedehnter Zeit (L)',
  'letGo.takeHold': 'Festhalten',
  'letGo.takeHoldHelp': 'Den Blatthalter halten, wo er ist (L oder Esc)',
  'letGo.slowness': '1/{times} der wahren Geschwindigkeit',
  'letGo.realSpeed': 'wahre Geschwindigkeit',
  'letGo.chartTrail': 'Weg seit dem Loslassen: was ihn treibt, abzüglich Reibung',
  'letGo.dialFault': 'Hier lässt er sich nicht loslassen.',
  'letGo.dialPushes': 'Schub {force}',
} satisfies Readonly<Record<keyof typeof EN, string>>;
