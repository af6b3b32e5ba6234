import type { HELP_BENCH as EN } from '../../en/help/bench';

/** Entries: reading the gauge. */
export const HELP_BENCH = {
  'help.gaugeStep.name': 'Anzeigeschritt des Kraftmessers',
  'help.gaugeStep.what':
    'Der kleinste Schritt, den der Kraftmesser anzeigt. Ein darauf gerundeter Messwert kann überall in diesem Schritt liegen; die Standardunsicherheit ist der Schritt geteilt durch die Wurzel aus zwölf.',
  'help.gaugeStep.sign': 'Ein Betrag.',
  'help.hysteresis.name': 'Drücken und Ziehen',
  'help.hysteresis.what':
    'Aufwärts und abwärts zeigt der Kraftmesser Verschiedenes: Reibung bremst in beiden Richtungen. Der Mittelwert beider Durchgänge ist das Moment, ihr halber Unterschied die Reibung. Gezeigt ist, was die Reibung dieses Kopfes an der Steuerstange ausmacht.',
  'help.hysteresis.sign': 'Positiv: Beim Ziehen zeigt er mehr Zug als beim Drücken.',
  'help.loopWork.name': 'Arbeit einer Schleife',
  'help.loopWork.what':
    'Was die Reibung auf dem Weg durch die Einstellwinkel hinauf und zurück verbraucht: die Fläche zwischen beiden Durchgängen.',
  'help.loopWork.sign': 'Positiv. Negativ heißt, dass Drücken und Ziehen vertauscht sind.',
  'help.residual.name': 'Was übrig bleibt',
  'help.residual.what':
    'Messwert minus Wert der angepassten Kurve, in Standardunsicherheiten. Gute Messwerte streuen ohne Muster um null; ein Muster sagt, dass der Kurve etwas fehlt.',
  'help.residual.sign': 'Positiv: Der Messwert liegt über der Kurve.',
  'help.band95.name': '95-%-Band',
  'help.band95.what':
    'In diesem Bereich liegt der wahre Wert in neunzehn von zwanzig Fällen, wenn die Messwerte so streuen wie angenommen: bei vielen Messwerten etwa die doppelte Standardunsicherheit nach beiden Seiten, bei wenigen mehr.',
  'help.band95.sign': 'Nach beiden Seiten.',
  'help.zeroOfGauge.name': 'Nullpunkt des Kraftmessers',
  'help.zeroOfGauge.what':
    'Was der Kraftmesser unbelastet anzeigt. Es verschiebt alle Messwerte gleich und wird zusammen mit dem Moment angepasst.',
  'help.zeroOfGauge.sign': 'Positiv: Er zeigt zu viel Zug.',
  'help.returningForce.name': 'Wiederkehrende Kraft',
  'help.returningForce.what':
    'Ab einem gewissen Einstellwinkel können die Messwerte mehr zeigen, als Masse und Reibung erklären. Wächst das mit dem Quadrat der Drehzahl und hat es nicht die Form, die Masse erzeugt, so kommt es wohl von der Luft.',
  'help.returningForce.sign': 'Zur Flachstellung hin oder von ihr weg, wie der Satz es sagt.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
