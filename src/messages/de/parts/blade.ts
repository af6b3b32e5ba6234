import { sparTexts, weightTexts } from './shared';

export const BLADE_TEXTS: Readonly<Record<string, string>> = {
  'part.blade.label': 'Blatt',
  'part.blade.help': 'Ein Blatt mit seinem Wurzelblock, auf dem Bolzen in der Gabel.',
  'part.blade.lengthMm.label': 'Länge',
  'part.blade.lengthMm.help': 'Abstand von der Bolzenachse zur Blattspitze.',
  'part.blade.rootChordMm.label': 'Sehne an der Wurzel',
  'part.blade.rootChordMm.help': 'Profilsehne am Anfang des Profilteils, am Ende des Wurzelblocks.',
  'part.blade.tipChordMm.label': 'Sehne an der Spitze',
  'part.blade.tipChordMm.help':
    'Profilsehne an der Spitze; sie ändert sich gleichmäßig von der Wurzel zur Spitze.',
  'part.blade.rootThicknessPercent.label': 'Dicke an der Wurzel, %',
  'part.blade.rootThicknessPercent.help':
    'Größte Dicke des Profils an der Wurzel, in Prozent seiner Sehne; eigene Koordinaten werden in der Höhe darauf gestreckt.',
  'part.blade.tipThicknessPercent.label': 'Dicke an der Spitze, %',
  'part.blade.tipThicknessPercent.help':
    'Größte Dicke des Profils an der Spitze, in Prozent seiner Sehne; eigene Koordinaten werden in der Höhe darauf gestreckt.',
  'part.blade.axisPercent.label': 'Achse auf der Sehne, %',
  'part.blade.axisPercent.help':
    'Wo die Bolzenachse auf der Sehne liegt, in Prozent davon ab der Vorderkante.',
  'part.blade.lagDeg.label': 'Schwenkwinkel',
  'part.blade.lagDeg.help':
    'Drehung des Blatts um den Bolzen, positiv zur Hinterkante; bei 0 zeigt es gerade nach außen.',
  'part.blade.rootLengthMm.label': 'Länge des Wurzelblocks',
  'part.blade.rootLengthMm.help':
    'Abstand von der Bolzenachse bis dorthin, wo der Wurzelblock endet und der Profilteil beginnt.',
  'part.blade.rootWidthMm.label': 'Breite des Wurzelblocks',
  'part.blade.rootWidthMm.help':
    'Breite des Wurzelblocks längs der Sehne; sein inneres Ende ist rund um den Bolzen.',
  'part.blade.rootBlockThicknessMm.label': 'Dicke des Wurzelblocks',
  'part.blade.rootBlockThicknessMm.help': 'Dicke des Wurzelblocks zwischen den Wangen der Gabel.',
  'part.blade.boltHoleMm.label': 'Bolzenloch',
  'part.blade.boltHoleMm.help': 'Durchmesser des Lochs für den Blattbolzen.',
  'part.blade.densityKgM3.label': 'Dichte',
  'part.blade.densityKgM3.help':
    'Masse eines Kubikmeters: des ganzen Blatts, wenn es voll ist, des Wurzelblocks, wenn es eine Haut über einem Kern hat.',
  'part.blade.sweepMm.label': 'Pfeilung an der Spitze',
  'part.blade.sweepMm.help':
    'Wie weit die Achse des Profilteils an der Spitze zur Hinterkante verschoben ist; das ändert sich gleichmäßig von der Wurzel an.',
  'part.blade.rootSweepMm.label': 'Pfeilung an der Wurzel',
  'part.blade.rootSweepMm.help':
    'Wie weit die Achse des Profilteils an seinem Anfang zur Hinterkante verschoben ist.',
  'part.blade.camberPercent.label': 'Wölbung, %',
  'part.blade.camberPercent.help':
    'Größte Höhe der Skelettlinie über der Sehne, in Prozent der Sehne: die erste Ziffer eines vierziffrigen Profils. 0 ist symmetrisch; negativ wölbt nach unten.',
  'part.blade.camberPositionPercent.label': 'Ort der Wölbung, %',
  'part.blade.camberPositionPercent.help':
    'Wo die Skelettlinie am höchsten ist, in Prozent der Sehne ab der Vorderkante: das Zehnfache der zweiten Ziffer eines vierziffrigen Profils.',
  'part.blade.sectionCoordinates.label': 'Eigene Koordinaten',
  'part.blade.sectionCoordinates.help':
    'Umriss eines eigenen Profils in Anteilen der Sehne: abwechselnd Ort ab der Vorderkante und Höhe, von der Hinterkante über die Oberseite zur Vorderkante und unten zurück. Leer: vierziffriges Profil.',
  'part.blade.sectionName.label': 'Name des Profils',
  'part.blade.sectionName.help': 'Wie die Datei der eigenen Koordinaten das Profil nennt.',
  'part.blade.bushDiameterMm.label': 'Durchmesser der Buchse',
  'part.blade.bushDiameterMm.help':
    'Außendurchmesser einer Buchse um das Bolzenloch, so lang wie der Wurzelblock dick ist; 0 für keine.',
  'part.blade.bushDensityKgM3.label': 'Dichte der Buchse',
  'part.blade.bushDensityKgM3.help':
    'Masse eines Kubikmeters der Buchse: Messing 8500, Bronze 8800.',
  'part.blade.build.label': 'Bauweise',
  'part.blade.build.help':
    'Durchgehend ein Werkstoff, oder eine gleichmäßig dicke Haut über einem Kern aus einem anderen.',
  'part.blade.build.solid': 'Ein Werkstoff',
  'part.blade.build.skin': 'Haut über Kern',
  'part.blade.skinThicknessMm.label': 'Dicke der Haut',
  'part.blade.skinThicknessMm.help':
    'Dicke der Haut, quer zur Oberfläche; zur Hinterkante hin treffen sich ihre Hälften, und es bleibt kein Kern.',
  'part.blade.skinDensityKgM3.label': 'Dichte der Haut',
  'part.blade.skinDensityKgM3.help':
    'Masse eines Kubikmeters der Haut: Kohlefaserlaminat 1550, Glasfaserlaminat 1900.',
  'part.blade.coreDensityKgM3.label': 'Dichte des Kerns',
  'part.blade.coreDensityKgM3.help':
    'Masse eines Kubikmeters des Kerns in der Haut: Hartschaum 30 bis 200, Balsa 160.',
  ...sparTexts('spar', 'Holm', 'des Holms'),
  ...sparTexts('spar2', 'Zweiter Holm', 'des zweiten Holms'),
  ...weightTexts('weight', 'Randgewicht', 'des Randgewichts'),
  ...weightTexts('weight2', 'Zweites Gewicht', 'des zweiten Gewichts'),
};
