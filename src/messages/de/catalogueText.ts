/** Tables of the catalogue, by the English: what a standard is called, where a row is from and what to know of it. */
export const CATALOGUE_TEXTS: Readonly<Record<string, string>> = {
  'phrase.Button head screw': 'Flachrundschraube mit Innensechskant',
  'phrase.Deep groove ball bearing, open': 'Rillenkugellager, offen',
  'phrase.Deep groove ball bearing, shields on both sides':
    'Rillenkugellager, beidseitig Deckscheiben',
  'phrase.Hexagon head bolt': 'Sechskantschraube mit Schaft',
  'phrase.Hexagon head screw, threaded to the head': 'Sechskantschraube, Gewinde bis zum Kopf',
  'phrase.Hexagon nut': 'Sechskantmutter',
  'phrase.Plain washer': 'Flache Scheibe',
  'phrase.Plain washer, small series': 'Flache Scheibe, kleine Reihe',
  'phrase.Prevailing torque nut with nylon ring': 'Sicherungsmutter mit Kunststoffring',
  'phrase.Set screw with flat point': 'Gewindestift mit Kegelstumpf',
  'phrase.Socket head cap screw': 'Zylinderschraube mit Innensechskant',
  'phrase.Socket head cap screw, inch': 'Zylinderschraube mit Innensechskant, Zoll',
  'phrase.Thin hexagon nut': 'Niedrige Sechskantmutter',
  'phrase.Thin prevailing torque nut with nylon ring':
    'Niedrige Sicherungsmutter mit Kunststoffring',
  'phrase.Thrust ball bearing, grooved': 'Axial-Rillenkugellager',

  "phrase.A seller's page, which prints the two ratings the wrong way round.":
    'Seite eines Verkäufers, die die beiden Tragzahlen vertauscht druckt.',
  'phrase.Also listed as 628/6.': 'Auch als 628/6 geführt.',
  'phrase.Also listed as 628/8.': 'Auch als 628/8 geführt.',
  'phrase.Also listed as 638/4; others give C 640 N and C0 225 N (memory).':
    'Auch als 638/4 geführt; andere nennen C 640 N und C0 225 N (aus dem Gedächtnis).',
  'phrase.Also listed as 638/5; others give C 715 N and C0 281 N (memory).':
    'Auch als 638/5 geführt; andere nennen C 715 N und C0 281 N (aus dem Gedächtnis).',
  'phrase.ISO 7380-1; threaded to the head. The range of lengths is from memory.':
    'ISO 7380-1; Gewinde bis zum Kopf. Die Reihe der Längen ist aus dem Gedächtnis.',
  'phrase.Others list C 640 N and C0 230 N for this size.':
    'Andere führen C 640 N und C0 230 N für diese Größe.',
  'phrase.Printed with the ratings of F2.5-6M, perhaps a copy; another list has 8.5 mm outside.':
    'Mit den Tragzahlen von F2.5-6M gedruckt, vielleicht abgeschrieben; eine andere Liste hat außen 8,5 mm.',
  'phrase.Ratings from memory: check them against the list of whoever made it.':
    'Tragzahlen aus dem Gedächtnis: mit der Liste des Herstellers vergleichen.',
  'phrase.The range of lengths is from memory; no chamfer on the head.':
    'Die Reihe der Längen ist aus dem Gedächtnis; keine Fase am Kopf.',
  'phrase.The range of lengths is from memory; the washer face is left out.':
    'Die Reihe der Längen ist aus dem Gedächtnis; der Telleransatz ist weggelassen.',
  'phrase.Which lengths have the short socket, and the longest length, are from memory.':
    'Welche Längen den kurzen Innensechskant haben, und die größte Länge, ist aus dem Gedächtnis.',
  'phrase.Widths of collar and ring are estimates.': 'Breiten von Bund und Ring sind Schätzungen.',
  'phrase.Without ratings.': 'Ohne Tragzahlen.',

  'phrase.ASME B18.3: an online table (1960 series: key engagement and thread length) and two open hardware data tables; lengths from memory':
    'ASME B18.3: eine Tabelle im Netz (Reihe 1960: Schlüsseltiefe und Gewindelänge) und zwei freie Normteiltabellen; Längen aus dem Gedächtnis',
  'phrase.ISO 10511: one open hardware data table; widths of collar and ring estimated (memory)':
    'ISO 10511: eine freie Normteiltabelle; Breiten von Bund und Ring geschätzt (aus dem Gedächtnis)',
  'phrase.ISO 4014 and ISO 4017: an online table of the standard and three open hardware data tables that agree; lengths from memory':
    'ISO 4014 und ISO 4017: eine Tabelle der Norm im Netz und drei freie Normteiltabellen, die übereinstimmen; Längen aus dem Gedächtnis',
  'phrase.ISO 4026: three online tables (DIN 913, DIN 915, ISO 4028 for both depths); which lengths are short, and the longest, from memory':
    'ISO 4026: drei Tabellen im Netz (DIN 913, DIN 915, ISO 4028 für beide Tiefen); welche Längen kurz sind, und die größte, aus dem Gedächtnis',
  'phrase.ISO 4032: an online table of the standard and three open hardware data tables that agree':
    'ISO 4032: eine Tabelle der Norm im Netz und drei freie Normteiltabellen, die übereinstimmen',
  'phrase.ISO 4035: three open hardware data tables that agree':
    'ISO 4035: drei freie Normteiltabellen, die übereinstimmen',
  'phrase.ISO 4762: two online tables of the standard and three open hardware data tables that agree':
    'ISO 4762: zwei Tabellen der Norm im Netz und drei freie Normteiltabellen, die übereinstimmen',
  'phrase.ISO 7040: one open hardware data table; widths of collar and ring estimated (memory)':
    'ISO 7040: eine freie Normteiltabelle; Breiten von Bund und Ring geschätzt (aus dem Gedächtnis)',
  'phrase.ISO 7089 (DIN 125 A): two open hardware data tables that agree; masses agree with a printed table (M5 up)':
    'ISO 7089 (DIN 125 A): zwei freie Normteiltabellen, die übereinstimmen; Massen stimmen mit einer gedruckten Tabelle überein (ab M5)',
  'phrase.ISO 7092 (DIN 433): one open hardware data table':
    'ISO 7092 (DIN 433): eine freie Normteiltabelle',
  'phrase.ISO 7380-1: an online table of the standard and two open hardware data tables that agree; lengths from memory':
    'ISO 7380-1: eine Tabelle der Norm im Netz und zwei freie Normteiltabellen, die übereinstimmen; Längen aus dem Gedächtnis',
  "phrase.makers' and sellers' pages; ratings printed in kgf, masses of two sizes without ratings":
    'Seiten von Herstellern und Verkäufern; Tragzahlen in kgf gedruckt, Massen zweier Größen ohne Tragzahlen',
  'phrase.memory': 'aus dem Gedächtnis',
  'phrase.open hardware data table': 'freie Normteiltabelle',
};
