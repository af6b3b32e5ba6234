import type { HELP_CONTROL as EN } from '../../en/help/control';

/** Entries: from the moment to the servo. */
export const HELP_CONTROL = {
  'help.pushRodForce.name': 'Kraft in der Steuerstange',
  'help.pushRodForce.what':
    'Die Kraft in der Steuerstange eines Blatthalters, die ihn bei diesem Einstellwinkel hält, der eigene Anteil der Stange eingeschlossen. Sie ist Moment durch Hebelarm und darum genau dort null, wo der Blatthalter ruht oder kippt.',
  'help.pushRodForce.sign':
    'Zug ist positiv: Der Blatthalter zieht an der Stange. Druck ist negativ.',
  'help.sliderForce.name': 'Schieberkraft',
  'help.sliderForce.what':
    'Was die Steuerung längs der Welle auf den Schieber bringen muss, um alle Blatthalter zusammen zu halten. e_Z sagt, wie steil die Stange steht.',
  'help.sliderForce.sign':
    'Positiv: Die Steuerung muss den Schieber nach oben drücken, in Richtung des Schubs.',
  'help.servoTorque.name': 'Servomoment',
  'help.servoTorque.what':
    'Was der Servo über den Umlenkhebel für alle Blatthalter halten muss. Die Stangen gelten als lang gegen ihre Hebel, es zählt also nur der Sinus der Hebelwinkel.',
  'help.servoTorque.sign':
    'Positiv in der Richtung, in die der Servo dreht, wenn der Schieber nach oben geht.',
  'help.pitchArm.name': 'Steuerhebel und Hebelarm',
  'help.pitchArm.what':
    'Der Steuerhebel trägt den Kugelkopf der Steuerstange. Seine Länge ist der Abstand des Kugelkopfs von der Verstellachse; was aus Kraft Moment macht, ist der Hebelarm h, der Abstand der Stangenlinie von der Achse, und der ändert sich mit dem Einstellwinkel. e_y und e_z sind die Richtung der Stange.',
  'help.pitchArm.sign':
    'Der Hebelarm wechselt das Vorzeichen, wo der Hebel über den Totpunkt geht.',
  'help.sliderTravel.name': 'Schieberweg',
  'help.sliderTravel.what':
    'Wie weit der Schieber von seinem Ort bei Flachstellung entfernt steht, und wie weit er für eine Drehung des Blatthalters läuft. Kurzer Weg für viel Einstellwinkel macht einen schwergängigen Schieber.',
  'help.sliderTravel.sign': 'Positiv die Welle hinauf, in Richtung des Schubs.',
  'help.overCentre.name': 'Über den Totpunkt',
  'help.overCentre.what':
    'Der Einstellwinkel, bei dem Stange und Hebel in einer Linie stehen: Der Hebelarm ist null, keine Kraft der Stange dreht den Blatthalter, und er klemmt. Gezeigt sind der nächste Totpunkt und wie weit der genutzte Bereich von ihm wegbleibt.',
  'help.overCentre.sign':
    'Ein Abstand unter null: Der Hebel geht im genutzten Bereich über den Totpunkt.',
  'help.overCentre.formula': 'h(θ_oc) = 0',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
