/** Materials of the tables by id, and, by the English, where their numbers are from and what to know of them. */
export const MATERIAL_NAMES: Readonly<Record<string, string>> = {
  'material.steel': 'Stahl',
  'material.steel-8-8': 'Schraubenstahl 8.8',
  'material.steel-10-9': 'Schraubenstahl 10.9',
  'material.steel-12-9': 'Schraubenstahl 12.9',
  'material.stainless-a2': 'Nichtrostender Stahl A2 (304)',
  'material.stainless-a2-70': 'Nichtrostender Schraubenstahl A2-70',
  'material.stainless-a4': 'Nichtrostender Stahl A4 (316)',
  'material.stainless-a4-80': 'Nichtrostender Schraubenstahl A4-80',
  'material.titanium': 'Titan 6Al-4V (Grad 5), geglüht',
  'material.aluminium-7075': 'Aluminium 7075-T6',
  'material.aluminium-6061': 'Aluminium 6061-T6',
  'material.aluminium-2024': 'Aluminium 2024-T3',
  'material.magnesium-az91': 'Magnesium AZ91',
  'material.brass': 'Automatenmessing (CuZn39Pb3, CW614N)',
  'material.tungsten-alloy-1': 'Wolframschwermetall, Klasse 1 (90 % W)',
  'material.tungsten-alloy-2': 'Wolframschwermetall, Klasse 2 (92,5 % W)',
  'material.tungsten-alloy-3': 'Wolframschwermetall, Klasse 3 (95 % W)',
  'material.tungsten-alloy-4': 'Wolframschwermetall, Klasse 4 (97 % W)',
  'material.tungsten': 'Wolfram, rein',
  'material.tungsten-carbide': 'Hartmetall, Wolframkarbid (WC-Co)',
  'material.lead': 'Blei',
  'material.nylon': 'Polyamid, ungefüllt (PA 66)',
  'material.nylon-pa6-gf30': 'Polyamid PA 6, 30 % Glas',
  'material.nylon-pa66-gf30': 'Polyamid PA 66, 30 % Glas',
  'material.pom': 'Polyacetal (POM)',
  'material.ptfe': 'PTFE',
  'material.polycarbonate': 'Polycarbonat',
  'material.epoxy': 'Epoxidharz, ungefüllt',
  'material.carbon-laminate': 'Kohlefaser/Epoxid, Gewebe oder Handlaminat',
  'material.carbon-ud': 'Kohlefaser/Epoxid, unidirektional, 61 % Faser',
  'material.glass-laminate': 'Glasfaser/Epoxid, Platte',
  'material.balsa': 'Balsa',
  'material.spruce': 'Sitkafichte',
  'material.beech': 'Buche',
  'material.birch-plywood': 'Birkensperrholz',
  'material.foam-pmi-32': 'PMI-Schaum, sehr leicht',
  'material.foam-pmi-52': 'PMI-Schaum, leicht',
  'material.foam-pmi-75': 'PMI-Schaum, mittel',
  'material.foam-pmi-110': 'PMI-Schaum, schwer',
  'material.foam-expanded': 'Partikelschaum oder Extruderschaum (EPS, XPS, EPP)',

  'phrase.30 % by mass of glass (2540) in nylon (1130) makes 1356: the printed 1390 looks high.':
    '30 % Glas (2540) nach Masse in Polyamid (1130) ergeben 1356: Die gedruckten 1390 wirken hoch.',
  'phrase.Brittle at room temperature: the strengths do not hold with a notch. Hard to turn.':
    'Bei Raumtemperatur spröde: Die Festigkeiten gelten nicht mit einer Kerbe. Schwer zu drehen.',
  'phrase.Copolymer; the homopolymer has 72 MPa and 3.0 GPa and is the high end (recalled).':
    'Copolymer; das Homopolymer hat 72 MPa und 3,0 GPa und ist das obere Ende (aus dem Gedächtnis).',
  'phrase.Creeps under its own pull at speed: only where it is held on every side. Poisonous dust.':
    'Kriecht bei Drehzahl unter dem eigenen Zug: nur dort, wo es von allen Seiten gehalten ist. Giftiger Staub.',
  'phrase.EN 10088-1 lists 7900, handbooks up to 8030 (both recalled, as is the modulus): weigh a piece.':
    'EN 10088-1 nennt 7900, Taschenbücher bis 8030 (beides aus dem Gedächtnis, auch der E-Modul): ein Stück wiegen.',
  'phrase.Ends of the range recalled.': 'Enden des Bereichs aus dem Gedächtnis.',
  'phrase.High end of the range recalled.': 'Oberes Ende des Bereichs aus dem Gedächtnis.',
  'phrase.Least values up to 16 mm diameter. Modulus and ends of the range recalled.':
    'Mindestwerte bis 16 mm Durchmesser. E-Modul und Enden des Bereichs aus dem Gedächtnis.',
  'phrase.Least values. Modulus and ends of the range recalled.':
    'Mindestwerte. E-Modul und Enden des Bereichs aus dem Gedächtnis.',
  'phrase.Least values; the soft class A2-50 has 500 and 210. EN 10088-1 lists 7900, handbooks up to 8030 (both recalled, as is the modulus): weigh a piece.':
    'Mindestwerte; die weiche Klasse A2-50 hat 500 und 210. EN 10088-1 nennt 7900, Taschenbücher bis 8030 (beides aus dem Gedächtnis, auch der E-Modul): ein Stück wiegen.',
  'phrase.Least values; typical bar is 900 and 830 or above.':
    'Mindestwerte; übliche Stangen haben 900 und 830 oder mehr.',
  'phrase.Low end: half fibre, resin of 1100. High end: the unidirectional one.':
    'Unteres Ende: halb Faser, Harz mit 1100. Oberes Ende: das unidirektionale.',
  'phrase.Modulus along the grain.': 'E-Modul längs der Faser.',
  'phrase.Modulus and ends of the range recalled.':
    'E-Modul und Enden des Bereichs aus dem Gedächtnis.',
  'phrase.Pieces as sold are mostly 110 to 170.': 'Verkaufte Stücke haben meist 110 bis 170.',
  'phrase.Stiffness and strength along the fibres only. Low end of the range recalled.':
    'Steifigkeit und Festigkeit nur längs der Fasern. Unteres Ende des Bereichs aus dem Gedächtnis.',
  'phrase.Strength of dry material; damp nylon is softer and tougher.':
    'Festigkeit des trockenen Werkstoffs; feuchtes Polyamid ist weicher und zäher.',
  'phrase.The value inside the range is recalled (6 % cobalt); more cobalt is lighter. Ground, not turned.':
    'Der Wert im Bereich ist aus dem Gedächtnis (6 % Kobalt); mehr Kobalt ist leichter. Wird geschliffen, nicht gedreht.',
  'phrase.Thin plywood is heavier for its glue.': 'Dünnes Sperrholz ist durch den Leim schwerer.',
  'phrase.Typical strengths.': 'Übliche Festigkeiten.',
  'phrase.Typical strengths; another data sheet has 560 and 480. Low end of the range recalled.':
    'Übliche Festigkeiten; ein anderes Datenblatt hat 560 und 480. Unteres Ende des Bereichs aus dem Gedächtnis.',
  'phrase.Yield from 220 to 350 by temper. The range spans neighbouring leaded brasses.':
    'Streckgrenze je nach Zustand von 220 bis 350. Der Bereich umfasst benachbarte bleihaltige Messinge.',

  'phrase.ISO 3506-1, read in three online tables; density: textbook appendix B.1, read online (8.00)':
    'ISO 3506-1, in drei Tabellen im Netz gelesen; Dichte: Lehrbuch, Anhang B.1, im Netz gelesen (8,00)',
  'phrase.ISO 898-1, read in two online tables; density 7.85 kg/dm3, as printed fastener mass tables use (fasten.it)':
    'ISO 898-1, in zwei Tabellen im Netz gelesen; Dichte 7,85 kg/dm3, wie gedruckte Massentabellen für Schrauben (fasten.it)',
  'phrase.data sheet of a metal dealer; online density table (C36000, 8.50)':
    'Datenblatt eines Metallhändlers; Dichtetabelle im Netz (C36000, 8,50)',
  'phrase.density 7.85 kg/dm3, as printed fastener mass tables use (fasten.it); online density table; textbook appendix B.1, read online':
    'Dichte 7,85 kg/dm3, wie gedruckte Massentabellen für Schrauben (fasten.it); Dichtetabelle im Netz; Lehrbuch, Anhang B.1, im Netz gelesen',
  'phrase.online data sheet': 'Datenblatt im Netz',
  'phrase.online data sheet; textbook appendix B.1, read online':
    'Datenblatt im Netz; Lehrbuch, Anhang B.1, im Netz gelesen',
  'phrase.online density table': 'Dichtetabelle im Netz',
  'phrase.online materials collection; a timber dealer (as sold, 110 to 170)':
    'Werkstoffsammlung im Netz; ein Holzhändler (wie verkauft, 110 bis 170)',
  'phrase.online table of plastics': 'Kunststofftabelle im Netz',
  'phrase.online table of plastics (1.14); a second online table (1.15)':
    'Kunststofftabelle im Netz (1,14); eine zweite Tabelle im Netz (1,15)',
  'phrase.plastics handbook, read at digilib.universitaspertamina.ac.id; online table of plastics':
    'Kunststoff-Handbuch, gelesen bei digilib.universitaspertamina.ac.id; Kunststofftabelle im Netz',
  'phrase.range read in an online article': 'Bereich in einem Artikel im Netz gelesen',
  'phrase.recalled data sheets': 'Datenblätter aus dem Gedächtnis',
  'phrase.recalled data sheets of polymethacrylimide foam':
    'Datenblätter von Polymethacrylimid-Schaum aus dem Gedächtnis',
  'phrase.recalled data sheets; online table of plastics has the high end (1.39)':
    'Datenblätter aus dem Gedächtnis; eine Kunststofftabelle im Netz hat das obere Ende (1,39)',
  'phrase.recalled handbook value': 'Taschenbuchwert aus dem Gedächtnis',
  'phrase.recalled handbook value (EN 350)': 'Taschenbuchwert aus dem Gedächtnis (EN 350)',
  'phrase.recalled handbook value: density limits of ASTM B777; tungsten content of the classes read in an online table':
    'Taschenbuchwert aus dem Gedächtnis: Dichtegrenzen nach ASTM B777; Wolframgehalt der Klassen in einer Tabelle im Netz gelesen',
  'phrase.recalled; one XPS sheet of 22 read on a club page':
    'aus dem Gedächtnis; eine XPS-Platte mit 22 auf einer Vereinsseite gelesen',
  'phrase.table of constituents at avdweb.nl': 'Tabelle der Bestandteile bei avdweb.nl',
  'phrase.table of weights at cci.one': 'Gewichtstabelle bei cci.one',
  'phrase.textbook appendix B.1, read online (2.77); online density table (2.78)':
    'Lehrbuch, Anhang B.1, im Netz gelesen (2,77); Dichtetabelle im Netz (2,78)',
  'phrase.textbook appendix B.1, read online (8.00)':
    'Lehrbuch, Anhang B.1, im Netz gelesen (8,00)',
  'phrase.three online data sheets (one 4.42; one for the strengths)':
    'drei Datenblätter im Netz (eines 4,42; eines für die Festigkeiten)',
  'phrase.two online data sheets': 'zwei Datenblätter im Netz',
  'phrase.two online data tables (1.87; 1.8 and 1.9)':
    'zwei Datentabellen im Netz (1,87; 1,8 und 1,9)',
  'phrase.two online data tables (70 % fibre: 1600)':
    'zwei Datentabellen im Netz (70 % Faser: 1600)',
  'phrase.worked out: 55 % carbon fibre (1780, read at avdweb.nl) by volume in epoxy of 1200 (recalled)':
    'gerechnet: 55 % Kohlefaser (1780, gelesen bei avdweb.nl) nach Volumen in Epoxid mit 1200 (aus dem Gedächtnis)',
};
