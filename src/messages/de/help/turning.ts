import type { HELP_TURNING as EN } from '../../en/help/turning';

/** Entries: what turns the grip. */
export const HELP_TURNING = {
  'help.speed.name': 'Drehzahl',
  'help.speed.what':
    'Wie schnell der Rotor dreht. Alles, was die Drehung mit der Masse macht, wächst mit ihrem Quadrat: Die anderthalbfache Drehzahl gibt mehr als die doppelte Kraft. Die Reibung im Stand wächst nicht mit.',
  'help.speed.sign': 'Das Moment der Masse ist für beide Drehrichtungen gleich.',
  'help.pitch.name': 'Einstellwinkel',
  'help.pitch.what':
    'Wie weit der Blatthalter aus der Flachstellung um die Verstellachse gedreht ist. In Flachstellung liegt die Profilsehne in der Drehebene.',
  'help.pitch.sign': 'Positiv hebt die Vorderkante.',
  'help.pitchInUse.name': 'Genutzter Bereich',
  'help.pitchInUse.what':
    'Wie weit die Steuerung den Einstellwinkel im Betrieb nach beiden Seiten bewegt. Urteil, Lasten und Haltekraft gelten für diesen Bereich.',
  'help.pitchInUse.sign': 'Ein Betrag: Er zählt von der Flachstellung nach beiden Seiten.',
  'help.featheringMoment.name': 'Verstellmoment',
  'help.featheringMoment.what':
    'Was einen Blatthalter um seine Verstellachse dreht, während er mit gehaltener Drehzahl umläuft, seine Teile als starr genommen: die Masse, und was der Entwurf sonst mitzählt, die Eigenmasse der Steuerstange, die Luft und ein Blatt, das auf seinem Bolzen schwenkt. Die Luft ist eine Schätzung, der Anteil der Masse exakt. In Büchern heißt der Anteil der Masse Propellermoment oder Fliehkraft-Rückstellmoment.',
  'help.featheringMoment.sign': 'Positiv hebt die Vorderkante.',
  'help.partMoment.name': 'Moment eines Teils',
  'help.partMoment.what':
    'Was die Masse eines Teils bei diesem Einstellwinkel zum Verstellmoment beiträgt. Die Anteile ergeben zusammen das Ganze der Masse. Vom ausgewählten Teil; ist keines ausgewählt, von allen.',
  'help.partMoment.sign': 'Positiv hebt die Vorderkante.',
  'help.torqueOffset.name': 'Achsversatz',
  'help.torqueOffset.what':
    'Wie weit die Verstellachse neben der Wellenachse vorbeigeht, in der Richtung, in die das Blatt läuft. Er fügt ein Moment hinzu, das sich erst nach einer vollen Drehung des Einstellwinkels wiederholt, wenn der Schwerpunkt neben der Verstellachse liegt; Gewicht, gleich nach beiden Seiten längs des Bolzens verteilt, gleicht es nicht aus.',
  'help.torqueOffset.sign': 'Positiv: Die Achse liegt vorn, in der Laufrichtung des Blattes.',
  'help.precone.name': 'Konuswinkel',
  'help.precone.what':
    'Wie weit die Verstellachse aus der Drehebene nach oben geneigt ist. Er schwächt die Wirkung der Streuung der Masse ein wenig (mit cos² β) und fügt ein Moment hinzu, das sich erst nach einer vollen Drehung des Einstellwinkels wiederholt, wenn Masse weit außen neben der Verstellachse liegt (J_xy, J_xz).',
  'help.precone.sign': 'Positiv neigt die Blattspitze nach oben, in Richtung des Schubs.',
  'help.rodMoment.name': 'Eigenmoment der Steuerstange',
  'help.rodMoment.what':
    'Auch die Steuerstange läuft mit dem Rotor um, und ihre eigene Masse drückt oder zieht am Hebel. Gerechnet für die ganze Stange zwischen ihren zwei Kugelköpfen, nicht als halbe Stange an einem Ende.',
  'help.rodMoment.sign': 'Positiv hebt die Vorderkante.',
  'help.rodMoment.formula':
    'M_rod = Ω² m_r ( B · B′ / 3 + S · B′ / 6 ) einer gleichmäßigen, dünnen Stange',
  'help.airMoment.name': 'Moment der Luft',
  'help.airMoment.what':
    'Womit die Luft am Blatt den Blatthalter dreht: die Kraft auf jeden Streifen des Blattes mal dem Abstand ihres Druckpunkts vor der Achse, und das eigene Moment des Profils. Eine Schätzung; über etwa 20 Grad überwiegt es (übliche Praxis).',
  'help.airMoment.sign': 'Positiv hebt die Vorderkante.',
  'help.airMoment.formula': 'M_air = ∫ ( d · dN + dM_section ) längs des Blattes',
  'help.bladeSwing.name': 'Blatt, das auf seinem Bolzen schwenkt',
  'help.bladeSwing.what':
    'Ein Blatt, das auf seinem Bolzen frei ist, schwenkt, bis seine Fliehkraft durch den Bolzen geht. Dabei wandert seine Masse um die Verstellachse; gezeigt ist, was das am Moment ändert. Ein geklemmtes Blatt behält seinen Winkel, dann zählt davon nichts.',
  'help.bladeSwing.sign': 'Positiv hebt die Vorderkante.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
