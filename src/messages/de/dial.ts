import type { DIAL as EN } from '../en/dial';

export const DIAL = {
  'dial.title': 'Winkelbild, von der Spitze gesehen',
  'dial.pointer': 'Einstellwinkel',
  'dial.plane': 'Drehebene',
  'dial.goTo': 'Einstellwinkel auf {angle} stellen',
  'dial.rests': 'ruht',
  'dial.flees': 'läuft weg',
  'dial.touches': 'ruht nicht, läuft nicht weg',
  'dial.overCentre': 'Hebel über Totpunkt',
  'dial.unreachable': 'außer Reichweite',
  'dial.stop': 'Schieber schlägt an',
  'dial.holds': 'Reibung hält',
  'dial.fromTo': '{from} bis {to}',
  'dial.held': 'Reibung hält ihn hier gegen {moment}.',
  'dial.noReach': 'Die Steuerstange reicht nicht hierher.',
  'dial.upTo.overCentre':
    'Mit {moment} nach oben getrieben, bis er bei {angle} über dem Totpunkt klemmt.',
  'dial.downTo.overCentre':
    'Mit {moment} nach unten getrieben, bis er bei {angle} über dem Totpunkt klemmt.',
  'dial.upTo.unreachable':
    'Mit {moment} nach oben getrieben, bis zum Ende der Stangenreichweite bei {angle}.',
  'dial.downTo.unreachable':
    'Mit {moment} nach unten getrieben, bis zum Ende der Stangenreichweite bei {angle}.',
  'dial.upTo.stop': 'Mit {moment} nach oben getrieben, bis zum Anschlag bei {angle}.',
  'dial.downTo.stop': 'Mit {moment} nach unten getrieben, bis zum Anschlag bei {angle}.',
  'dial.ellipse': 'Streuung der Masse: rund wäre neutral',
  'dial.ellipseRound': 'Streuung der Masse: rund',
  'dial.empty': 'Nichts da, was sich drehen könnte.',
  'dial.standsStill': 'Der Rotor steht still: Nichts dreht den Blatthalter.',
  'dial.neutral': 'Neutral: bleibt überall stehen.',
  'dial.atRest': 'Ruht hier: Weggedrückt kommt er zurück.',
  'dial.atFlee': 'Auf der Kippe: Er läuft nach beiden Seiten weg.',
  'dial.atTouch': 'Kein Moment hier, und keines, das ihn zurückholt.',
  'dial.upToRest': 'Mit {moment} nach oben getrieben, zur Ruhelage bei {angle}.',
  'dial.downToRest': 'Mit {moment} nach unten getrieben, zur Ruhelage bei {angle}.',
  'dial.upPastEnd': 'Mit {moment} nach oben getrieben, über +90° hinaus.',
  'dial.downPastEnd': 'Mit {moment} nach unten getrieben, über −90° hinaus.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
