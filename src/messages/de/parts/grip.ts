import { DENSITY_HELP, seatTexts } from './shared';

/** Grip, pitch arm and pitch link. */
export const GRIP_TEXTS: Readonly<Record<string, string>> = {
  'part.grip.label': 'Blatthalter',
  'part.grip.help':
    'Die Hülse, die auf der Verstellachse dreht, und die Gabel, die das Blatt hält.',
  'part.grip.barrelStartMm.label': 'Anfang der Hülse',
  'part.grip.barrelStartMm.help': 'Abstand des inneren Endes der Hülse von der Welle.',
  'part.grip.barrelEndMm.label': 'Ende der Hülse',
  'part.grip.barrelEndMm.help':
    'Abstand des äußeren Endes der Hülse von der Welle, dort beginnt der Steg.',
  'part.grip.barrelDiameterMm.label': 'Durchmesser der Hülse',
  'part.grip.barrelDiameterMm.help': 'Außendurchmesser der Hülse um die Verstellachse.',
  'part.grip.barrelBoreMm.label': 'Bohrung der Hülse',
  'part.grip.barrelBoreMm.help': 'Durchmesser der Bohrung für die Lager; 0 für eine volle Hülse.',
  'part.grip.webThicknessMm.label': 'Dicke des Stegs',
  'part.grip.webThicknessMm.help':
    'Werkstoff zwischen Hülse und Grund des Blattschlitzes, längs der Verstellachse.',
  'part.grip.boltStationMm.label': 'Ort des Bolzens',
  'part.grip.boltStationMm.help': 'Abstand der Bolzenachse von der Welle.',
  'part.grip.forkWidthMm.label': 'Breite der Gabel',
  'part.grip.forkWidthMm.help':
    'Breite von Gabel und Steg längs der Sehne; das äußere Ende ist rund um den Bolzen.',
  'part.grip.slotHeightMm.label': 'Höhe des Schlitzes',
  'part.grip.slotHeightMm.help': 'Abstand der Wangen; dazwischen sitzt die Blattwurzel.',
  'part.grip.cheekThicknessMm.label': 'Dicke der Wangen',
  'part.grip.cheekThicknessMm.help': 'Dicke jeder Wange, über und unter dem Schlitz.',
  'part.grip.boltHoleMm.label': 'Bolzenloch',
  'part.grip.boltHoleMm.help': 'Durchmesser des Lochs durch beide Wangen.',
  'part.grip.armSeatMm.label': 'Ort des Steuerhebels',
  'part.grip.armSeatMm.help': 'Abstand von der Welle, in dem der Steuerhebel auf der Hülse sitzt.',
  'part.grip.densityKgM3.label': 'Dichte',
  'part.grip.densityKgM3.help': DENSITY_HELP,
  ...seatTexts('grip'),

  'part.pitchArm.label': 'Steuerhebel',
  'part.pitchArm.help':
    'Der Hebel, der den Blatthalter dreht, mit dem Kugelkopf für die Steuerstange.',
  'part.pitchArm.side.label': 'Seite',
  'part.pitchArm.side.help': 'Ob der Hebel zur Vorderkante oder zur Hinterkante reicht.',
  'part.pitchArm.side.leading': 'Vorderkante',
  'part.pitchArm.side.trailing': 'Hinterkante',
  'part.pitchArm.studAlong.label': 'Zapfen längs',
  'part.pitchArm.studAlong.help':
    'Ob der Kugelzapfen längs des Blatts oder längs der Welle vom Hebel absteht.',
  'part.pitchArm.studAlong.span': 'Blatt',
  'part.pitchArm.studAlong.shaft': 'Welle',
  'part.pitchArm.armReachMm.label': 'Reichweite',
  'part.pitchArm.armReachMm.help':
    'Abstand der Kugelmitte von der Verstellachse längs der Sehne, nach der einen oder anderen Seite.',
  'part.pitchArm.ballHeightMm.label': 'Höhe der Kugel',
  'part.pitchArm.ballHeightMm.help':
    'Höhe der Kugelmitte über der Verstellachse (+z), in Flachstellung.',
  'part.pitchArm.ballStationMm.label': 'Ort der Kugel',
  'part.pitchArm.ballStationMm.help':
    'Wie weit die Kugelmitte vom Sitz des Hebels nach außen liegt.',
  'part.pitchArm.armStartMm.label': 'Anfang des Hebels',
  'part.pitchArm.armStartMm.help':
    'Abstand von der Verstellachse, in dem der Hebel beginnt: der halbe Durchmesser der Hülse.',
  'part.pitchArm.armRootWidthMm.label': 'Breite an der Hülse',
  'part.pitchArm.armRootWidthMm.help':
    'Breite des Hebels an seinem Anfang, quer zu Zapfen und Reichweite.',
  'part.pitchArm.armTipWidthMm.label': 'Breite an der Kugel',
  'part.pitchArm.armTipWidthMm.help': 'Breite des Hebels am Zapfen; dort ist sein Ende rund.',
  'part.pitchArm.armThicknessMm.label': 'Dicke des Hebels',
  'part.pitchArm.armThicknessMm.help': 'Dicke des Hebels in Richtung des Zapfens.',
  'part.pitchArm.ballDiameterMm.label': 'Kugeldurchmesser',
  'part.pitchArm.ballDiameterMm.help': 'Durchmesser der Kugel.',
  'part.pitchArm.studDiameterMm.label': 'Zapfendurchmesser',
  'part.pitchArm.studDiameterMm.help': 'Durchmesser des Schafts zwischen Hebel und Kugel.',
  'part.pitchArm.armDensityKgM3.label': 'Dichte des Hebels',
  'part.pitchArm.armDensityKgM3.help':
    'Masse eines Kubikmeters des Hebels: Polyamid 1140, Aluminium 2700.',
  'part.pitchArm.studDensityKgM3.label': 'Dichte der Kugel',
  'part.pitchArm.studDensityKgM3.help':
    'Masse eines Kubikmeters von Kugel und Zapfen: Stahl 7850, Messing 8500.',
  'part.pitchArm.socket.ball': 'Auf der Kugel',

  'part.pitchLink.label': 'Steuerstange',
  'part.pitchLink.help': 'Die Stange zwischen der Kugel am Steuerhebel und dem Schieber.',
  'part.pitchLink.slider.label': 'Schieber',
  'part.pitchLink.slider.help':
    'Auf welcher Seite des Hebels der Schieber ist: Die Stange läuft nach −z (unten) oder +z (oben).',
  'part.pitchLink.slider.below': 'Unten',
  'part.pitchLink.slider.above': 'Oben',
  'part.pitchLink.lengthMm.label': 'Länge',
  'part.pitchLink.lengthMm.help': 'Abstand zwischen den Mitten der zwei Kugeln.',
  'part.pitchLink.rodDiameterMm.label': 'Stangendurchmesser',
  'part.pitchLink.rodDiameterMm.help': 'Durchmesser der Stange zwischen den zwei Pfannen.',
  'part.pitchLink.ballDiameterMm.label': 'Kugeldurchmesser',
  'part.pitchLink.ballDiameterMm.help':
    'Durchmesser der Kugeln, um die sich die Pfannen schließen.',
  'part.pitchLink.cupDiameterMm.label': 'Pfannendurchmesser',
  'part.pitchLink.cupDiameterMm.help': 'Außendurchmesser der Pfannen an beiden Enden.',
  'part.pitchLink.cupWidthMm.label': 'Pfannenbreite',
  'part.pitchLink.cupWidthMm.help': 'Breite der Pfannen längs der Achse ihrer Öffnung.',
  'part.pitchLink.densityKgM3.label': 'Dichte',
  'part.pitchLink.densityKgM3.help': DENSITY_HELP,
};
