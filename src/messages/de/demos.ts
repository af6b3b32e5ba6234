const DUNLIN =
  'Dunlin 260 is an invented 260 mm tail rotor; every number is made up. Not a product, not for flight.';
const HERON =
  'Heron 3000 is an invented 3 m tail rotor of a full-size helicopter; every number is made up. Not a product, not for flight; full-size aircraft: approved data only.';

/** Demo designs in the gallery, and, by the English, their own names, notes and names of parts. */
export const DEMO_TEXTS: Readonly<Record<string, string>> = {
  'demo.1-bare-grip.json.title': 'Nackter Blatthalter',
  'demo.1-bare-grip.json.summary':
    'Nur Blatthalter, Steuerhebel und Steuerstange: Er zieht von selbst zur Mitte.',
  'demo.2-long-bolt.json.title': 'Langer Bolzen, kein Blatt',
  'demo.2-long-bolt.json.summary':
    'Überausgeglichen: Die Flachstellung ist instabil, er kippt nach einer der beiden Seiten.',
  'demo.3-ordinary-bolt.json.title': 'Blatt mit gewöhnlichem Bolzen',
  'demo.3-ordinary-bolt.json.summary':
    'Zieht stark zur Mitte. Den Bolzenkopf nach außen ziehen hilft.',
  'demo.4-turned-nut.json.title': 'Blatt mit der richtigen gedrehten Mutter',
  'demo.4-turned-nut.json.summary':
    'Eine geschlossene Mutter der richtigen Länge: Er bleibt, wo man ihn hinstellt.',
  'demo.5-both-sides.json.title': 'Das gleiche Gewicht auf beiden Seiten',
  'demo.5-both-sides.json.summary':
    'Ein längerer Kopf oben und eine runde Mutter unten teilen sich die Arbeit.',
  'demo.6-full-size.json.title': 'Volle Größe, 3 m',
  'demo.6-full-size.json.summary':
    'Ein erfundener Heckrotor von 3 m bei 1 200 Umdrehungen je Minute: dieselben Fragen mit großen Zahlen.',

  'demo.name.Dunlin 260, bare grip': 'Dunlin 260, nackter Blatthalter',
  'demo.name.Dunlin 260, long bolt, no blade': 'Dunlin 260, langer Bolzen, kein Blatt',
  'demo.name.Dunlin 260, ordinary bolt': 'Dunlin 260, gewöhnlicher Bolzen',
  'demo.name.Dunlin 260, turned nut': 'Dunlin 260, gedrehte Mutter',
  'demo.name.Dunlin 260, weight on both sides': 'Dunlin 260, Gewicht auf beiden Seiten',
  'demo.name.Heron 3000, full size': 'Heron 3000, volle Größe',
  [`demo.name.${DUNLIN}`]:
    'Dunlin 260 ist ein erfundener Heckrotor von 260 mm; jede Zahl ist ausgedacht. Kein Produkt, nicht zum Fliegen.',
  [`demo.name.${HERON}`]:
    'Heron 3000 ist ein erfundener Heckrotor von 3 m eines bemannten Hubschraubers; jede Zahl ist ausgedacht. Kein Produkt, nicht zum Fliegen; bemannte Luftfahrzeuge: nur zugelassene Unterlagen.',
  'demo.name.Blade grip': 'Blatthalter',
  'demo.name.Pitch arm': 'Steuerhebel',
  'demo.name.Pitch link': 'Steuerstange',
  'demo.name.Inner bearing': 'Inneres Lager',
  'demo.name.Thrust bearing': 'Axiallager',
  'demo.name.Outer bearing': 'Äußeres Lager',
  'demo.name.Blade 92 x 28': 'Blatt 92 x 28',
  'demo.name.Blade 1130 x 200': 'Blatt 1130 x 200',
  'demo.name.Blade bolt M3 x 22': 'Blattbolzen M3 x 22',
  'demo.name.Blade bolt M30 x 185': 'Blattbolzen M30 x 185',
  'demo.name.Long blade bolt M3 x 30': 'Langer Blattbolzen M3 x 30',
  'demo.name.Washer under the head': 'Scheibe unter dem Kopf',
  'demo.name.Washer under the nut': 'Scheibe unter der Mutter',
  'demo.name.Locking nut M3': 'Sicherungsmutter M3',
  'demo.name.Turned nut, closed end': 'Gedrehte Mutter, geschlossen',
  'demo.name.Turned locking nut': 'Gedrehte Sicherungsmutter',
  'demo.name.Round nut': 'Runde Mutter',
};
