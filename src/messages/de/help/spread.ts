import type { HELP_SPREAD as EN } from '../../en/help/spread';

/** Entries: what the mass of the head is like. */
export const HELP_SPREAD = {
  'help.mass.name': 'Masse',
  'help.mass.what':
    'Alles, was mit dem Blatthalter dreht, zusammengezählt. Ausgeblendete Teile zählen nicht mit, und auch die Steuerstange nicht, denn sie dreht nicht mit ihm. Was auf der Waage lag, gilt vor dem, was gerechnet ist.',
  'help.mass.sign': 'Positiv. Masse allein dreht den Blatthalter nicht; es zählt, wo sie sitzt.',
  'help.mass.formula': 'm = ∫ dm',
  'help.centreOfMass.name': 'Schwerpunkt',
  'help.centreOfMass.what':
    'Wo die Masse des Kopfes säße, wenn sie ein einziger Punkt wäre: x von der Welle nach außen, y zur Vorderkante, z quer zu beiden. S ist das erste Moment: Masse mal Abstand, zusammengezählt.',
  'help.centreOfMass.sign':
    'x positiv nach außen, y positiv zur Vorderkante, z in Flachstellung positiv nach oben.',
  'help.centreOfMass.formula': 'x_c = ∫ x dm / m',
  'help.jxx.name': 'J_xx, Streuung längs des Blattes',
  'help.jxx.what':
    'Jedes Stückchen Masse mal seinem Abstand von der Welle im Quadrat. Am Drehen des Blatthalters hat es keinen Anteil; gebraucht wird es für die Fliehkraft und die Hauptachsen.',
  'help.jxx.sign': 'Nie negativ.',
  'help.jxx.formula': 'J_xx = ∫ x² dm',
  'help.jyy.name': 'J_yy, Streuung längs der Sehne',
  'help.jyy.what':
    'Jedes Stückchen Masse mal seinem Abstand von der Verstellachse im Quadrat, längs der Sehne. Breite Blätter machen es groß, und es legt den Blatthalter flach.',
  'help.jyy.sign': 'Nie negativ. Mehr davon zieht zur Mitte.',
  'help.jyy.formula': 'J_yy = ∫ y² dm',
  'help.jzz.name': 'J_zz, Streuung längs des Bolzens',
  'help.jzz.what':
    'Dasselbe quer zur Sehne, so wie der Blattbolzen steht. Der Abstand zählt im Quadrat: Wenig Masse weit außen am Bolzen leistet so viel wie viel Masse nahe der Achse.',
  'help.jzz.sign': 'Nie negativ. Mehr davon treibt aus der Flachstellung weg.',
  'help.jzz.formula': 'J_zz = ∫ z² dm',
  'help.product.name': 'J_yz, Deviationsmoment',
  'help.product.what':
    'Wie weit die Masse einseitig neben der Sehnenebene liegt: Masse vorn und oben oder hinten und unten. Es neigt die Ruhelage, und in Flachstellung ist es das ganze Moment, das die Masse macht.',
  'help.product.sign':
    'Positiv: mehr Masse vorn und oben (oder hinten und unten); in Flachstellung senkt es dann die Vorderkante. Negativ: Es hebt sie.',
  'help.product.formula': 'J_yz = ∫ y z dm',
  'help.difference.name': 'J_yy − J_zz',
  'help.difference.what':
    'Wie viel weiter die Masse längs der Sehne streut als längs des Bolzens. Davon hängt ab, ob die Flachstellung eine Ruhelage oder eine Kipplage ist, und wie stark. Es auf null zu bringen ist der Zweck der richtigen Mutter.',
  'help.difference.sign':
    'Positiv zieht zur Mitte, negativ läuft aus der Flachstellung weg; null, mit J_yz gleich null, ist neutral.',
  'help.difference.formula': 'A = J_yy − J_zz',
  'help.share.name': 'Anteil eines Teils',
  'help.share.what':
    'Derselbe Unterschied für ein Teil allein. Die Anteile ergeben zusammen den des Kopfes; die Teileliste zeigt also, wer wohin zieht. Vom ausgewählten Teil; ist keines ausgewählt, vom größten.',
  'help.share.sign':
    'Positiv: zieht den Blatthalter flach. Negativ: zieht ihn aus der Flachstellung weg.',
  'help.share.formula': 'A_part = J_yy − J_zz des Teils',
  'help.spreadEllipse.name': 'Streuungsellipse',
  'help.spreadEllipse.what':
    'Die Masse längs der Verstellachse gesehen: wie weit sie im quadratischen Mittel von der Achse liegt, in jeder Richtung. Gezeichnet in doppelter Größe. Die lange Achse sucht die Drehebene; eine runde Ellipse ist neutral.',
  'help.spreadEllipse.sign':
    'φ dreht von der Vorderkante nach oben zur langen Achse. Der Blatthalter ruht, wo die lange Achse in die Drehebene gedreht ist.',
  'help.principalAxes.name': 'Hauptachsen',
  'help.principalAxes.what':
    'Drei rechtwinklige Achsen durch den Schwerpunkt, um die der Kopf frei drehen könnte, ohne zu taumeln, mit dem Trägheitsmoment um jede. Die Seite findet sie als Eigenvektoren; ihre Summe ist das Doppelte der Streuung der Masse um den Schwerpunkt, das dient als Probe.',
  'help.principalAxes.sign': 'Nie negativ: kleinstes, mittleres und größtes.',
  'help.principalAxes.formula': 'I = tr(J_c) 1 − J_c',
  'help.featheringInertia.name': 'Trägheitsmoment um die Verstellachse',
  'help.featheringInertia.what':
    'Wie schwer sich der Blatthalter um seine eigene Achse drehen lässt, ganz gleich, was ihn antreibt. Mit dem Anteil von Steuerstange und Schieber bestimmt es, wie schnell sich ein losgelassener Blatthalter bewegt.',
  'help.featheringInertia.sign': 'Positiv.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
