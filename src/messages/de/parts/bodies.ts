import { DENSITY_HELP, meshTexts, seatTexts } from './shared';

/** Bearing, weights, plain bodies, bodies from meshes, keep-outs. */
export const BODY_TEXTS: Readonly<Record<string, string>> = {
  'part.bearing.label': 'Lager',
  'part.bearing.help':
    'Ein Lager auf der Verstellachse. Seine ganze Masse zählt so, als drehe sie mit dem Blatthalter und ziehe an ihm; das ist vorsichtig: Ein Teil davon bleibt auf der Welle.',
  'part.bearing.bearingType.label': 'Bauart',
  'part.bearing.bearingType.help':
    'Rillenkugellager, Nadellager und Gleitbuchsen tragen Lasten quer zur Achse, ein Axialkugellager den Zug längs der Achse.',
  'part.bearing.bearingType.deepGroove': 'Rillenkugellager',
  'part.bearing.bearingType.thrustBall': 'Axialkugellager',
  'part.bearing.bearingType.needle': 'Nadellager',
  'part.bearing.bearingType.plain': 'Gleitlager',
  'part.bearing.boreMm.label': 'Bohrung',
  'part.bearing.boreMm.help': 'Durchmesser der Welle, auf die es passt.',
  'part.bearing.outerDiameterMm.label': 'Außendurchmesser',
  'part.bearing.outerDiameterMm.help': 'Durchmesser des Lochs, in dem es sitzt.',
  'part.bearing.widthMm.label': 'Breite',
  'part.bearing.widthMm.help':
    'Breite längs seiner Achse; bei einem Axiallager die Höhe beider Scheiben und der Kugeln.',
  'part.bearing.massFrom.label': 'Masse aus',
  'part.bearing.massFrom.help':
    'Aus den Maßen, so weit gefüllt, wie Lager dieser Bauart es meist sind (auf ein Zehntel genau), oder aus einer Masse von Waage oder Liste.',
  'part.bearing.massFrom.dimensions': 'Maßen',
  'part.bearing.massFrom.given': 'Angabe',
  'part.bearing.massGrams.label': 'Masse',
  'part.bearing.massGrams.help': 'Masse des ganzen Lagers, gleichmäßig über seinen Ring verteilt.',
  'part.bearing.densityKgM3.label': 'Dichte',
  'part.bearing.densityKgM3.help':
    'Masse eines Kubikmeters von Ringen und Kugeln: Stahl 7850, Bronze 8800, Polyamid 1140.',
  'part.bearing.frictionCoefficient.label': 'Reibungszahl',
  'part.bearing.frictionCoefficient.help':
    'Reibung im Lauf, für ein Moment aus Reibungszahl × Last × halber Bohrung; 0 nimmt, was für die Bauart üblich ist.',
  'part.bearing.staticLoadN.label': 'Statische Tragzahl',
  'part.bearing.staticLoadN.help':
    'Statische Tragzahl C0 der Liste (ISO 76); 0, wo sie nicht bekannt ist.',
  'part.bearing.dynamicLoadN.label': 'Dynamische Tragzahl',
  'part.bearing.dynamicLoadN.help':
    'Dynamische Tragzahl C der Liste (ISO 281); 0, wo sie nicht bekannt ist.',

  'part.weight.label': 'Gewicht',
  'part.weight.help':
    'Ein gedrehtes Gewicht, einfach oder auf einem Stiel, am Ende oder am Kopf des Bolzens.',
  'part.weight.diameterMm.label': 'Durchmesser',
  'part.weight.diameterMm.help': 'Außendurchmesser des Gewichts.',
  'part.weight.lengthMm.label': 'Länge',
  'part.weight.lengthMm.help': 'Länge des Gewichts selbst, längs des Bolzens.',
  'part.weight.boreMm.label': 'Bohrung',
  'part.weight.boreMm.help': 'Durchmesser eines Lochs ganz durch Gewicht und Stiel; 0 für keines.',
  'part.weight.stalkDiameterMm.label': 'Stieldurchmesser',
  'part.weight.stalkDiameterMm.help': 'Durchmesser des Stiels zwischen Sitz und Gewicht.',
  'part.weight.stalkLengthMm.label': 'Stiellänge',
  'part.weight.stalkLengthMm.help':
    'Abstand vom Sitz zum Gewicht; 0 für ein Gewicht direkt auf dem Sitz.',
  'part.weight.densityKgM3.label': 'Dichte',
  'part.weight.densityKgM3.help': DENSITY_HELP,

  'part.pointMass.label': 'Massenpunkt',
  'part.pointMass.help':
    'Eine Masse ohne Ausdehnung: ein gewogenes Teil, von dem nur der Ort des Schwerpunkts bekannt ist.',
  'part.pointMass.massGrams.label': 'Masse',
  'part.pointMass.massGrams.help': 'Masse, wie von der Waage abgelesen.',

  'part.block.label': 'Quader',
  'part.block.help': 'Ein einfacher Quader, an seiner Mitte angeordnet.',
  'part.block.sizeMm.label': 'Größe',
  'part.block.sizeMm.help': 'Volle Länge der drei Kanten, längs x, y und z des Quaders.',
  'part.block.densityKgM3.label': 'Dichte',
  'part.block.densityKgM3.help': DENSITY_HELP,

  'part.cylinder.label': 'Zylinder',
  'part.cylinder.help': 'Ein einfacher Zylinder oder ein Rohr, an seiner Mitte angeordnet.',
  'part.cylinder.diameterMm.label': 'Durchmesser',
  'part.cylinder.diameterMm.help': 'Außendurchmesser.',
  'part.cylinder.boreMm.label': 'Bohrung',
  'part.cylinder.boreMm.help': 'Durchmesser des durchgehenden Lochs; 0 für einen vollen Zylinder.',
  'part.cylinder.lengthMm.label': 'Länge',
  'part.cylinder.lengthMm.help': 'Abstand zwischen den zwei Stirnflächen.',
  'part.cylinder.densityKgM3.label': 'Dichte',
  'part.cylinder.densityKgM3.help': DENSITY_HELP,

  'part.meshBody.label': 'Körper aus einem Netz',
  'part.meshBody.help':
    'Ein Blatthalter oder ein beliebiges Teil aus einer Netzdatei, gewogen aus seiner geschlossenen Oberfläche.',
  ...meshTexts('meshBody'),
  'part.meshBody.densityKgM3.label': 'Dichte',
  'part.meshBody.densityKgM3.help': DENSITY_HELP,
  'part.meshBody.role.label': 'Steht für',
  'part.meshBody.role.help':
    'Ein Blatthalter bietet Sitze für Steuerhebel, Bolzen und Blatt, an den unten angegebenen Orten.',
  'part.meshBody.role.part': 'Nichts',
  'part.meshBody.role.grip': 'Den Blatthalter',
  'part.meshBody.armSeatMm.label': 'Ort des Steuerhebels',
  'part.meshBody.armSeatMm.help':
    'Als Blatthalter: Ort, an dem der Steuerhebel sitzt, längs x vom Nullpunkt.',
  'part.meshBody.boltStationMm.label': 'Ort des Bolzens',
  'part.meshBody.boltStationMm.help':
    'Als Blatthalter: Abstand der Bolzenachse vom Nullpunkt, längs x.',
  'part.meshBody.boltSeatHeightMm.label': 'Höhe der Bolzenauflage',
  'part.meshBody.boltSeatHeightMm.help':
    'Als Blatthalter: Höhe der Fläche, auf der der Bolzenkopf aufliegt, über der Verstellachse.',
  'part.meshBody.nutSeatDepthMm.label': 'Tiefe der Mutterauflage',
  'part.meshBody.nutSeatDepthMm.help':
    'Als Blatthalter: Tiefe der Fläche, an der die Mutter anliegt, unter der Verstellachse.',
  ...seatTexts('meshBody'),

  'part.keepOut.label': 'Sperrzone',
  'part.keepOut.help':
    'Ein Raum, in den drehende Teile nicht kommen dürfen: das Gehäuse, eine Heckflosse, eine Nabe. Sie wiegt nichts.',
  'part.keepOut.form.label': 'Form',
  'part.keepOut.form.help':
    'Was frei bleiben muss: alles unter einer Ebene, ein Quader, ein Zylinder oder ein Körper aus einer Netzdatei.',
  'part.keepOut.form.plane': 'Ebene',
  'part.keepOut.form.box': 'Quader',
  'part.keepOut.form.cylinder': 'Zylinder',
  'part.keepOut.form.mesh': 'Körper aus einem Netz',
  'part.keepOut.fixedTo.label': 'Fest an',
  'part.keepOut.fixedTo.help':
    'Das Gehäuse steht still, die Welle dreht also jedes Teil daran vorbei; die Nabe dreht mit der Welle, aber nicht mit dem Einstellwinkel.',
  'part.keepOut.fixedTo.case': 'Dem Gehäuse',
  'part.keepOut.fixedTo.hub': 'Der Nabe',
  'part.keepOut.shownMm.label': 'Gezeichnete Seite',
  'part.keepOut.shownMm.help':
    'Einer Ebene: Seite des Quadrats, das von ihr gezeichnet wird; sie selbst hat kein Ende.',
  'part.keepOut.sizeMm.label': 'Größe',
  'part.keepOut.sizeMm.help':
    'Eines Quaders: volle Länge der drei Kanten, längs seiner Achsen x, y und z.',
  'part.keepOut.diameterMm.label': 'Durchmesser',
  'part.keepOut.diameterMm.help': 'Eines Zylinders: sein Durchmesser.',
  'part.keepOut.lengthMm.label': 'Länge',
  'part.keepOut.lengthMm.help':
    'Eines Zylinders: Abstand zwischen seinen zwei Stirnflächen, längs seiner Achse z.',
  ...meshTexts('keepOut'),
};
