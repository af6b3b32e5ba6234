/** Single words of the page that English keeps where they are used, by the English. */
export const PAGE_WORDS: Readonly<Record<string, string>> = {
  'phrase.Del': 'Entf',
  'phrase.PgUp': 'Bild auf',
  'phrase.PgDn': 'Bild ab',
  'phrase.Home': 'Pos 1',
  'phrase.End': 'Ende',
  'phrase.Enter': 'Eingabe',
  'phrase.to spare': 'Reserve',
  'phrase.rod and air': 'Stange und Luft',
  'phrase.pull \u2212 push': 'Zug \u2212 Druck',
  'phrase.grip {n}': 'Halter {n}',
  'phrase.ISO 76, static': 'ISO 76, statisch',
  'phrase.Deep groove': 'Rillenkugellager',
  'phrase.Deep groove shielded': 'Rillenkugellager, gedeckt,',
  'phrase.Thrust ball': 'Axialkugellager',
  'phrase.the back edge of {a}': 'der hintere Rand von: {a}',
  'phrase.the front edge of {a}': 'der vordere Rand von: {a}',
  'phrase.the dimensions give a mass of {a} to scale':
    'die Maße geben eine Masse von {a}, die nicht zu strecken ist',
  'phrase.{a} comes out at {b} in SI units': '{a} ergibt sich zu {b} in SI-Einheiten',
  'phrase.{a} is timed twice with different results':
    'zweimal mit verschiedenem Ergebnis gestoppt: {a}',
  'phrase.the dimensions spread their mass as no body can':
    'die Maße verteilen ihre Masse, wie es kein Körper kann',
};
