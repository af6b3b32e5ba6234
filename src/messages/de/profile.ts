import type { PROFILE as EN } from '../en/profile';

export const PROFILE = {
  'profile.title': 'Masse längs des Blatts',
  'profile.massAxis': 'Masse je Länge, {unit}',
  'profile.centreAxis': 'Schwerpunkt jeder Scheibe, y, {unit}',
  'profile.spanAxis': 'x ab der Bolzenachse, {unit}',
  'profile.centreOfMass': 'Schwerpunkt',
  'profile.summary':
    'Schwerpunkt {x} außerhalb der Bolzenachse und {y} {side} ihr. Streuung um den Schwerpunkt (J): {span} längs des Blatts, {chord} längs der Profilsehne, {thickness} in Dickenrichtung.',
  'profile.ahead': 'vor',
  'profile.behind': 'hinter',
  'profile.noMass': 'Es gibt keine Masse zu zeigen.',
  'section.title': 'Profil',
  'section.naca': 'Vierziffriges NACA-Profil nach den Zahlen oben.',
  'section.fromFile': '{name}, {count} Punkte aus einer Datei.',
  'section.open': 'Profil aus einer Datei…',
  'section.back': 'Zurück zum NACA-Profil',
  'section.outline': 'Umriss des Profils, Nase links',
  'section.openFailed': 'Die Datei konnte nicht gelesen werden: {reason}',
  'section.tooLarge': 'Die Datei hat mehr als {limit} kB: Sie ist kein Profil.',
  'section.refused': '{file}: {reason}',
  'section.unread': '{file} wird nicht genommen, denn die Datei {reason}.',
  'section.unreadLine': '{file} wird nicht genommen, denn Zeile {line} {reason}.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
