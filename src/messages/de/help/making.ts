import type { HELP_MAKING as EN } from '../../en/help/making';

/** Entries: what cancels, and how closely parts must be made. */
export const HELP_MAKING = {
  'help.lumpToNeutral.name': 'Gewicht bis neutral',
  'help.lumpToNeutral.what':
    'Wie viel Masse, als kleiner Massenpunkt auf der Achse des Bolzens 10 mm von der Verstellachse, J_yy − J_zz auf null brächte. Im doppelten Abstand genügt ein Viertel davon.',
  'help.lumpToNeutral.sign': 'Positiv: So viel fehlt. Negativ: So viel ist zu viel.',
  'help.massTolerance.name': 'Spielraum der Masse',
  'help.massTolerance.what':
    'Wie weit die Masse eines Teils abweichen darf, bevor etwas nicht stimmt: der Schritt der Waage, wo gewogen wurde, 2 %, wo aus Maßen gerechnet wird (übliche Praxis). Darunter steht, was 2 % des Teils an J_yy − J_zz ändern.',
  'help.massTolerance.sign': 'Nach beiden Seiten.',
  'help.tolerance.name': 'Toleranz und Steigung',
  'help.tolerance.what':
    'Wie weit ein Maß, eine Dichte oder eine Masse von ihrem Wert abweichen darf, und wie stark sich die Kraft mit einem Schritt davon ändert. Steigung mal Toleranz sagt, welche Zahl zählt. Berechnet unter Ausgleichen, Wie genau.',
  'help.tolerance.sign': 'Steigung positiv: Ein größerer Wert verschiebt die Kraft zum Zug hin.',
  'help.tolerance95.name': 'Streuung der Kraft',
  'help.tolerance95.what':
    'Wie weit die Kräfte von Köpfen auseinanderliegen, die innerhalb ihrer Toleranzen gefertigt sind. In erster Ordnung addieren sich die Streuungen aller Zahlen quadratisch. Der Toleranzlauf würfelt Köpfe und braucht diese Annahme nicht.',
  'help.tolerance95.sign': 'Ein Betrag.',
  'help.tolerance95.formula': 'σ_T² = ∑ (s_i σ_i)²',
  'help.chance.name': 'Aussicht, im Ziel zu bleiben',
  'help.chance.what':
    'Der Anteil der Köpfe eines Toleranzlaufs, deren Kraft im ganzen genutzten Bereich im Ziel bleibt, mit dem Fehler, den so viele Köpfe übrig lassen.',
  'help.chance.sign': 'Von 0 bis 100 %.',
  'help.matching.name': 'Gleichheit der Blatthalter',
  'help.matching.what':
    'Wie weit sich Kräfte und Massen der Blatthalter eines Rotors unterscheiden, wenn jeder innerhalb seiner Toleranzen gefertigt ist. Zwei Blätter von etwa gleicher Masse und gleichem Aufbau brauchen etwa denselben Bolzen (übliche Praxis).',
  'help.matching.sign': 'Ein Betrag.',
  'help.clearance.name': 'Abstand',
  'help.clearance.what':
    'Der kleinste Abstand eines drehenden Teils von einer Sperrzone, über alle Einstellwinkel, die das Gestänge zulässt, und rundherum.',
  'help.clearance.sign': 'Positiv: eine Lücke. Negativ: So weit dringt es ein.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
