import type { HELP_FIGURES as EN } from '../../en/help/figures';

/** What the small figures of the glossary show, in words, and the labels in them. */
export const HELP_FIGURES = {
  'help.figure.pitch':
    'Von der Blattspitze gesehen: die Profilsehne, um den Einstellwinkel gedreht, Vorderkante hoch, über der Drehebene.',
  'help.figure.spread':
    'Zwei Querschnitte, von der Blattspitze gesehen: Ein Blatt, breit längs der Sehne, liegt flach; ein Bolzen, lang quer dazu, steht aufrecht.',
  'help.figure.product':
    'Ein Kugelkopf vor der Achse und über der Sehnenebene; der Blatthalter ruht so weit nach unten gedreht, wie die lange Achse nach oben geneigt war.',
  'help.figure.ellipse':
    'Drei Ellipsen: lang längs der Sehne, zieht zur Mitte; rund, neutral; lang längs des Bolzens, läuft weg.',
  'help.figure.lever':
    'Hebel, Kugelkopf und Steuerstange, von der Blattspitze gesehen. Der Hebelarm ist der Abstand der Stangenlinie von der Verstellachse.',
  'help.figure.overCentre':
    'Hebel und Steuerstange in einer Linie durch die Achse: Der Hebelarm ist null.',
  'help.figure.hills':
    'Energie über dem Einstellwinkel: Eine Kugel in der Mulde ist eine Ruhelage, gefüllt; eine auf der Kuppe eine Kipplage, hohl.',
  'help.figure.band':
    'Moment über dem Einstellwinkel zwischen zwei Linien der Reibung: Wo die Kurve dazwischen liegt, wird der Blatthalter gehalten.',
  'help.figure.plan':
    'Blatthalter und Blatt von oben: Welle, Verstellachse, Abstand von der Drehachse, Profilsehne, Vorderkante und Viertelpunkt.',
  'help.figure.flap':
    'Von hinten: Gewicht unter der Drehebene wird zu ihr hinaufgezogen und hebt die Blattspitze; Gewicht darüber biegt sie nach unten; Schub hebt sie.',
  'help.label.planeOfRotation': 'Drehebene',
  'help.label.leadingEdge': 'Vorderkante',
  'help.label.centres': 'zur Mitte',
  'help.label.flees': 'läuft weg',
  'help.label.atFlatPitch': 'in Flachstellung',
  'help.label.whereItRests': 'wo er ruht',
  'help.label.ball': 'Kugelkopf',
  'help.label.pushRod': 'Steuerstange',
  'help.label.station': 'Abstand',
  'help.label.chord': 'Sehne',
  'help.label.shaft': 'Welle',
  'help.label.featheringAxis': 'Verstellachse',
  'help.label.bendsTheTipDown': 'Spitze nach unten',
  'help.label.bendsItUp': 'Spitze nach oben',
  'help.label.thrust': 'Schub',
  'help.label.rests': 'ruht',
  'help.label.pitch': 'Winkel',
  'help.label.held': 'gehalten',
  'help.label.friction': 'Reibung',
  'help.label.moment': 'Moment',
  'help.label.neutral': 'neutral',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
