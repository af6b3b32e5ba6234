import type { HELP_REST as EN } from '../../en/help/rest';

/** Entries: where the grip goes by itself. */
export const HELP_REST = {
  'help.restAngle.name': 'Ruhelage',
  'help.restAngle.what':
    'Ein Einstellwinkel, bei dem nichts den Blatthalter dreht und zu dem er zurückkehrt: ein stabiles Gleichgewicht, ein gefüllter Kreis. Für die Streuung der Masse allein gibt es eine Formel; zählen Stange, Luft oder Achsversatz mit, wird gesucht, und beides ist gezeigt.',
  'help.restAngle.sign': 'Positiv: Er ruht mit der Vorderkante hoch.',
  'help.restAngle.formula': 'tan 2θ = −2 J_yz / (J_yy − J_zz)',
  'help.fleeAngle.name': 'Kipplage',
  'help.fleeAngle.what':
    'Ein Einstellwinkel, bei dem nichts den Blatthalter dreht, von dem aus er aber nach beiden Seiten wegläuft: ein instabiles Gleichgewicht, ein hohler Kreis. Für die Streuung der Masse allein steht sie rechtwinklig zur Ruhelage.',
  'help.fleeAngle.sign': 'Positiv: mit der Vorderkante hoch.',
  'help.fleeAngle.formula': 'θ_flee = θ_rest ± 90°, Masse allein',
  'help.stiffness.name': 'Steifigkeit in der Ruhelage',
  'help.stiffness.what':
    'Wie schnell das rückdrehende Moment wächst, wenn der Blatthalter aus der Ruhelage gedrückt wird: die Steigung der Kurve am Nulldurchgang, mit umgekehrtem Vorzeichen. Die Steuerung spürt sie als Zug zur Mitte.',
  'help.stiffness.sign': 'Positiv an einer Ruhelage, negativ an einer Kipplage.',
  'help.stiffness.formula': 'k = −dM/dθ in der Ruhelage',
  'help.frequency.name': 'Frequenz',
  'help.frequency.what':
    'Wie schnell ein losgelassener Blatthalter um seine Ruhelage schwingt, bei kleinen Ausschlägen, Reibung und Dämpfung weggelassen. Die Masse der Steuerstange schwingt mit; die des Schiebers wird unter Loslassen eingestellt und zählt hier nicht. Weite Schwingungen sind langsamer. Ein dünnes freies Blatt schwingt einmal je Umdrehung des Rotors; Gewicht längs des Bolzens macht es langsamer, bis ein neutraler Blatthalter gar nicht mehr schwingt.',
  'help.frequency.sign': 'Positiv.',
  'help.frequency.formula': 'ω² = k / (J_yy + J_zz + I_rod)',
  'help.energy.name': 'Energie',
  'help.energy.what':
    'Die Arbeit, die das Moment auf dem Weg von diesem Einstellwinkel zur Flachstellung verrichten würde, bei gehaltener Drehzahl: Ein Blatthalter rollt in die Mulden und von den Kuppen. Ruhelagen sind Mulden, Kipplagen Kuppen. Was sich an der Energie der Drehung selbst ändert, gibt und nimmt der Motor.',
  'help.energy.sign': 'Positiv: Dieser Einstellwinkel liegt über der Flachstellung.',
  'help.energy.formula': 'M = −dV/dθ',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
