import { DENSITY_HELP } from './shared';

/** Bolt, nut and washer. */
export const FASTENER_TEXTS: Readonly<Record<string, string>> = {
  'part.bolt.label': 'Blattbolzen',
  'part.bolt.help':
    'Der Bolzen durch Gabel und Blatt, mit einem Kopf, der verlängert werden kann, um Masse weit außen zu tragen.',
  'part.bolt.lengthMm.label': 'Länge',
  'part.bolt.lengthMm.help': 'Länge unter dem Kopf, von der Auflage bis zum Ende des Gewindes.',
  'part.bolt.extensionLengthMm.label': 'Kopfverlängerung',
  'part.bolt.extensionLengthMm.help':
    'Wie weit der Kopf über seine Höhe hinaus verlängert ist; 0 für einen einfachen Kopf.',
  'part.bolt.extensionDiameterMm.label': 'Durchmesser der Verlängerung',
  'part.bolt.extensionDiameterMm.help': 'Durchmesser des Stücks, das oben am Kopf angedreht ist.',
  'part.bolt.headDiameterMm.label': 'Kopfdurchmesser',
  'part.bolt.headDiameterMm.help': 'Durchmesser des Kopfes.',
  'part.bolt.headHeightMm.label': 'Kopfhöhe',
  'part.bolt.headHeightMm.help': 'Höhe des Kopfes über seiner Auflage, ohne die Verlängerung.',
  'part.bolt.threadLengthMm.label': 'Gewindelänge',
  'part.bolt.threadLengthMm.help': 'Länge des Gewindes, vom Ende des Bolzens zum Kopf hin.',
  'part.bolt.shankDiameterMm.label': 'Gewindedurchmesser',
  'part.bolt.shankDiameterMm.help':
    'Nenndurchmesser (Außendurchmesser) des Gewindes, zugleich der des glatten Schafts.',
  'part.bolt.threadPitchMm.label': 'Gewindesteigung',
  'part.bolt.threadPitchMm.help': 'Abstand von einem Gewindegang zum nächsten.',
  'part.bolt.socketAcrossMm.label': 'Innensechskant, Weite',
  'part.bolt.socketAcrossMm.help': 'Schlüsselweite des Innensechskants.',
  'part.bolt.socketDepthMm.label': 'Innensechskant, Tiefe',
  'part.bolt.socketDepthMm.help':
    'Tiefe des Innensechskants von der Oberseite des Kopfes oder seiner Verlängerung; 0 für keinen.',
  'part.bolt.densityKgM3.label': 'Dichte',
  'part.bolt.densityKgM3.help': DENSITY_HELP,
  'part.bolt.headForm.label': 'Kopfform',
  'part.bolt.headForm.help':
    'Zylinderkopf, gewölbter Flachrundkopf, Sechskantkopf, oder keiner wie bei einem Gewindestift.',
  'part.bolt.headForm.cap': 'Zylinder',
  'part.bolt.headForm.button': 'Flachrund',
  'part.bolt.headForm.hexagon': 'Sechskant',
  'part.bolt.headForm.none': 'Keiner',
  'part.bolt.headChamferMm.label': 'Fase am Kopf',
  'part.bolt.headChamferMm.help':
    'Höhe der Fase oben: 45 Grad rund um einen Zylinderkopf, 30 Grad an den Ecken eines Sechskants; 0 für keine.',
  'part.bolt.headTopDiameterMm.label': 'Fläche oben',
  'part.bolt.headTopDiameterMm.help': 'Durchmesser der ebenen Fläche oben auf einem Flachrundkopf.',
  'part.bolt.headRimHeightMm.label': 'Randhöhe',
  'part.bolt.headRimHeightMm.help':
    'Höhe des geraden Rands unter der Wölbung eines Flachrundkopfs.',
  'part.bolt.threadForm.label': 'Gewindeform',
  'part.bolt.threadForm.help':
    'Grundprofil wie gezeichnet, oder gerollt aus einem Rohling vom Flankendurchmesser, wie gekaufte Schrauben.',
  'part.bolt.threadForm.basic': 'Grundprofil',
  'part.bolt.threadForm.rolled': 'Gerollt',
  'part.bolt.threadRunOutMm.label': 'Gewindeauslauf',
  'part.bolt.threadRunOutMm.help':
    'Länge hinter dem Gewinde, auf der es in den glatten Schaft ausläuft.',
  'part.bolt.pointDiameterMm.label': 'Durchmesser der Kuppe',
  'part.bolt.pointDiameterMm.help':
    'Durchmesser der ebenen Fläche am Ende, vom Gewinde mit 45 Grad angefast; 0 für keine Fase.',
  'part.bolt.propertyClass.label': 'Festigkeitsklasse',
  'part.bolt.propertyClass.help':
    'Festigkeit, wie auf dem Kopf gekennzeichnet: 8.8, 10.9 oder 12.9 bei Stahl (ISO 898-1), A2 oder A4 bei nichtrostendem Stahl (ISO 3506-1). Nicht bekannt: Die Lasten stehen ohne Grenze da.',
  'part.bolt.propertyClass.unknown': 'Nicht bekannt',
  'part.bolt.propertyClass.8.8': '8.8',
  'part.bolt.propertyClass.10.9': '10.9',
  'part.bolt.propertyClass.12.9': '12.9',
  'part.bolt.propertyClass.A2-50': 'A2-50',
  'part.bolt.propertyClass.A2-70': 'A2-70',
  'part.bolt.propertyClass.A4-80': 'A4-80',
  'part.bolt.socket.underHead': 'Unter dem Kopf',
  'part.bolt.socket.thread': 'Auf dem Gewinde',
  'part.bolt.socket.boltEnd': 'Am Ende des Bolzens',
  'part.bolt.socket.headTop': 'Oben auf dem Kopf',

  'part.nut.label': 'Mutter',
  'part.nut.help':
    'Eine Sechskantmutter oder gedrehte Mutter auf dem Blattbolzen, offen oder geschlossen.',
  'part.nut.form.label': 'Form',
  'part.nut.form.help': 'Sechskant, oder rund gedreht.',
  'part.nut.form.hex': 'Sechskant',
  'part.nut.form.round': 'Rund',
  'part.nut.acrossMm.label': 'Weite',
  'part.nut.acrossMm.help': 'Schlüsselweite einer Sechskantmutter oder Durchmesser einer runden.',
  'part.nut.heightMm.label': 'Höhe',
  'part.nut.heightMm.help': 'Höhe des Körpers ab der Auflage, ohne Bund und geschlossenes Ende.',
  'part.nut.threadDiameterMm.label': 'Gewindedurchmesser',
  'part.nut.threadDiameterMm.help': 'Nenndurchmesser (Außendurchmesser) des Gewindes.',
  'part.nut.threadPitchMm.label': 'Gewindesteigung',
  'part.nut.threadPitchMm.help': 'Abstand von einem Gewindegang zum nächsten.',
  'part.nut.collarDiameterMm.label': 'Bunddurchmesser',
  'part.nut.collarDiameterMm.help':
    'Durchmesser des runden Bunds hinter dem Körper, wie er einen Sicherungsring hält.',
  'part.nut.collarHeightMm.label': 'Bundhöhe',
  'part.nut.collarHeightMm.help':
    'Höhe, die der Bund mit Gewinde zum Körper hinzufügt; 0 für keinen.',
  'part.nut.collarGrip.label': 'Bund auf dem Gewinde',
  'part.nut.collarGrip.help':
    'Ein unrund gequetschter Bund klemmt auf dem Gewinde (Ganzmetall-Sicherungsmutter); er wiegt so viel wie ein einfacher.',
  'part.nut.collarGrip.plain': 'Dreht frei',
  'part.nut.collarGrip.squeezed': 'Klemmt',
  'part.nut.closedEndMm.label': 'Geschlossenes Ende',
  'part.nut.closedEndMm.help':
    'Länge des vollen Stücks, das die Mutter hinter dem Gewinde verschließt; 0 für eine offene Mutter.',
  'part.nut.densityKgM3.label': 'Dichte',
  'part.nut.densityKgM3.help': DENSITY_HELP,
  'part.nut.chamferMm.label': 'Fase',
  'part.nut.chamferMm.help':
    'Höhe der Fase an beiden Stirnflächen des Körpers: 30 Grad an den Ecken eines Sechskants, 45 an einem runden.',
  'part.nut.countersinkDiameterMm.label': 'Senkung',
  'part.nut.countersinkDiameterMm.help':
    'Durchmesser, auf den das Gewinde an jedem offenen Ende mit 45 Grad angesenkt ist; 0 für keine.',
  'part.nut.insertHeightMm.label': 'Höhe des Rings',
  'part.nut.insertHeightMm.help':
    'Höhe des Sicherungsrings, vom hinteren Ende des Gewindes; 0 für keinen.',
  'part.nut.insertInnerDiameterMm.label': 'Bohrung des Rings',
  'part.nut.insertInnerDiameterMm.help': 'Innendurchmesser des Sicherungsrings.',
  'part.nut.insertOuterDiameterMm.label': 'Durchmesser des Rings',
  'part.nut.insertOuterDiameterMm.help':
    'Außendurchmesser des Sicherungsrings, zugleich die Bohrung des Metalls um ihn.',
  'part.nut.insertDensityKgM3.label': 'Dichte des Rings',
  'part.nut.insertDensityKgM3.help': 'Masse eines Kubikmeters des Sicherungsrings: Polyamid 1140.',
  'part.nut.socket.nutFace': 'Unter der Mutter',

  'part.washer.label': 'Scheibe',
  'part.washer.help': 'Eine flache Scheibe unter einem Bolzenkopf oder einer Mutter.',
  'part.washer.outerDiameterMm.label': 'Außendurchmesser',
  'part.washer.outerDiameterMm.help': 'Durchmesser ihres äußeren Rands.',
  'part.washer.innerDiameterMm.label': 'Innendurchmesser',
  'part.washer.innerDiameterMm.help': 'Durchmesser des Lochs.',
  'part.washer.thicknessMm.label': 'Dicke',
  'part.washer.thicknessMm.help': 'Höhe, die sie unter Kopf oder Mutter hinzufügt.',
  'part.washer.densityKgM3.label': 'Dichte',
  'part.washer.densityKgM3.help': DENSITY_HELP,
};
