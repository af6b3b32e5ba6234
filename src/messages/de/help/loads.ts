import type { HELP_LOADS as EN } from '../../en/help/loads';

/** Entries: what bearings, blade and bolt carry. */
export const HELP_LOADS = {
  'help.pull.name': 'Fliehkraft eines Teils',
  'help.pull.what':
    'Die Fliehkraft auf ein Teil, wie sie sieht, wer mit dem Blatthalter umläuft: von der Welle weg, parallel zur Drehebene. r ist der Abstand seines Schwerpunkts von der Wellenachse. Vom ausgewählten Teil; ist keines ausgewählt, von dem, das am stärksten zieht.',
  'help.pull.sign': 'Ein Betrag; die Richtung ist von der Welle weg.',
  'help.pull.formula': 'F = Ω² m r',
  'help.axialPull.name': 'Zug längs der Achse',
  'help.axialPull.what':
    'Was alle Teile zusammen längs der Verstellachse nach außen ziehen: die Last des Axiallagers. Steuerstange und Luft geben ihren Anteil dazu.',
  'help.axialPull.sign': 'Positiv nach außen.',
  'help.bearingLoad.name': 'Lagerlasten',
  'help.bearingLoad.what':
    'Was jedes Lager quer (F_r) und längs (F_a) zur Achse trägt, zusammengefasst als ruhende Last, die gleich stark drückt. Verglichen wird mit der statischen Tragzahl des Lagers.',
  'help.bearingLoad.sign': 'Ein Betrag.',
  'help.flapMoment.name': 'Schlagmoment',
  'help.flapMoment.what':
    'Was den Blatthalter in der Mitte seiner Lager nach oben oder unten biegt: Masse über der Drehebene wird in sie zurückgezogen und biegt die Blattspitze nach unten, Schub biegt sie nach oben. Gewicht auf der Seite, zu der die Blätter ziehen, entlastet die Lager.',
  'help.flapMoment.sign': 'Positiv biegt die Blattspitze nach oben.',
  'help.thrust.name': 'Schub eines Blattes',
  'help.thrust.what':
    'Der Auftrieb der Luft an einem Blatt im Schwebeflug und der Radius, an dem er angreift. Eine Schätzung. Daneben steht, wie er den Blatthalter an der Welle biegt.',
  'help.thrust.sign': 'Positiv längs der Welle.',
  'help.boltPull.name': 'Zug am Bolzen',
  'help.boltPull.what':
    'Wie stark das Blatt mit allem, was es trägt, am Bolzen zieht. Der Bolzen sitzt in zwei Wangen, jede Scherfuge nimmt also die Hälfte.',
  'help.boltPull.sign': 'Ein Betrag.',
  'help.boltStrength.name': 'Festigkeit des Bolzens',
  'help.boltStrength.what':
    'Jede Last des Bolzens als Anteil dessen, was seine Festigkeitsklasse erlaubt: Abscheren in Schaft oder Gewinde, Biegung zwischen den Wangen, beides zusammen, Lochleibung in den Wangen und in der Blattwurzel, Biegung durch das, was übersteht. Nur ruhende Grenzen: Verschleiß und Ermüdung sind nicht beurteilt, auch nicht, was neben den Bohrungen ausreißen kann.',
  'help.boltStrength.sign': '1 ist die Grenze; darüber ist es zu viel.',
  'help.firstLimit.name': 'Erste Grenze',
  'help.firstLimit.what':
    'Die Drehzahl, bei der die erste bekannte Grenze eines Lagers oder Bolzens bei diesem Einstellwinkel ausgeschöpft wäre; unter Lasten irgendwo im genutzten Bereich. Lasten wachsen mit dem Quadrat der Drehzahl, die Drehzahl also mit der Wurzel des ausgeschöpften Anteils.',
  'help.firstLimit.sign':
    'Positiv. Eine Grenze, die nicht bekannt ist, ist nicht dabei: Sie kann längst überschritten sein.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
