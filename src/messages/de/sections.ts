/** Fields of the design that belong to no part: rotor, what is counted, control, friction, air, tolerances. */
export const SECTION_TEXTS: Readonly<Record<string, string>> = {
  'rotor.speedRpm.label': 'Drehzahl',
  'rotor.speedRpm.help':
    'Drehzahl des Rotors in Umdrehungen je Minute; jede Massenkraft wächst mit ihrem Quadrat.',
  'rotor.bladeCount.label': 'Blätter',
  'rotor.bladeCount.help':
    'Wie viele Blatthalter der Rotor trägt. Kräfte in der Steuerstange gelten für einen Blatthalter, Schieber und Servo tragen alle.',
  'rotor.torqueOffsetMm.label': 'Achsversatz',
  'rotor.torqueOffsetMm.help':
    'Wie weit die Verstellachse vor der Wellenachse liegt, in der Laufrichtung des Blatts.',
  'rotor.preconeDeg.label': 'Konuswinkel',
  'rotor.preconeDeg.help':
    'Wie weit die Verstellachse zum positiven Schub hin nach oben geneigt ist.',
  'rotor.usedPitchDeg.label': 'Genutzter Bereich',
  'rotor.usedPitchDeg.help':
    'Größter Einstellwinkel im gewöhnlichen Betrieb, nach beiden Seiten der Flachstellung; das Urteil nennt die Kraft dort.',
  'rotor.lowestSpeedRpm.label': 'Kleinste Drehzahl',
  'rotor.lowestSpeedRpm.help': 'Wo das Diagramm über der Drehzahl beginnt.',
  'rotor.highestSpeedRpm.label': 'Größte Drehzahl',
  'rotor.highestSpeedRpm.help':
    'So schnell darf der Rotor höchstens drehen; leer: die Drehzahl oben.',
  'rotor.overspeedPercent.label': 'Überdrehzahl',
  'rotor.overspeedPercent.help':
    'Um so viel über der größten Drehzahl werden die Lasten beurteilt.',
  'rotor.temperatureC.label': 'Lufttemperatur',
  'rotor.temperatureC.help':
    'Temperatur der Luft; leer: die der Normatmosphäre in der angegebenen Höhe.',
  'rotor.altitudeM.label': 'Höhe',
  'rotor.altitudeM.help': 'Druckhöhe über dem Meeresspiegel in der Normatmosphäre.',
  'rotor.hubMassGrams.label': 'Masse der Nabe',
  'rotor.hubMassGrams.help':
    'Was außer den Blatthaltern mit dem Rotor dreht: Nabe, Zapfen, Welle. Nur die Wuchtgüte braucht es.',

  'counted.rodMass.label': 'Steuerstange',
  'counted.rodMass.help': 'Der Zug der Drehung an der Eigenmasse der Steuerstange.',
  'counted.air.label': 'Luft',
  'counted.air.help':
    'Das Moment der Luft am Blatt im Schwebeflug: eine Schätzung, während der Anteil der Masse exakt ist.',
  'counted.friction.label': 'Reibung',
  'counted.friction.help':
    'Reibung des Gestänges, im Stand gemessen, und Reibung der belasteten Lager.',

  'control.sliderXMm.label': 'Schieberkugel außen',
  'control.sliderXMm.help':
    'Abstand der Schieberkugel von der Wellenachse längs der Verstellachse; leer: in Flachstellung gerade unter (oder über) der Kugel des Hebels.',
  'control.sliderYMm.label': 'Schieberkugel vorn',
  'control.sliderYMm.help':
    'Wie weit die Schieberkugel vor der Welle liegt, in der Laufrichtung des Blatts; leer: in Flachstellung gerade unter (oder über) der Kugel des Hebels.',
  'control.lowestTravelMm.label': 'Unterer Anschlag',
  'control.lowestTravelMm.help':
    'Schieberweg am unteren Anschlag, von seinem Ort bei Flachstellung, längs +Z; leer: kein Anschlag.',
  'control.highestTravelMm.label': 'Oberer Anschlag',
  'control.highestTravelMm.help':
    'Schieberweg am oberen Anschlag, von seinem Ort bei Flachstellung, längs +Z; leer: kein Anschlag.',
  'control.crankOutputMm.label': 'Umlenkhebel, Arm am Schieber',
  'control.crankOutputMm.help':
    'Vom Drehpunkt des Umlenkhebels bis dorthin, wo er den Schieber bewegt.',
  'control.crankInputMm.label': 'Umlenkhebel, Arm am Servo',
  'control.crankInputMm.help': 'Vom Drehpunkt des Umlenkhebels bis zur Kugel der Stange zum Servo.',
  'control.servoArmMm.label': 'Servohebel',
  'control.servoArmMm.help':
    'Von der Welle des Servos bis zur Kugel seiner Stange. Stangen gelten als lang gegen die Hebel.',
  'control.servoMidTravelMm.label': 'Schieberweg bei Servomitte',
  'control.servoMidTravelMm.help':
    'Schieberweg, bei dem alle Hebel rechtwinklig zu ihren Stangen stehen.',
  'control.servoTorqueNmm.label': 'Nennmoment des Servos',
  'control.servoTorqueNmm.help': 'Moment, das der Servo halten kann, aus seinem Datenblatt.',
  'control.servoMargin.label': 'Gewünschte Reserve',
  'control.servoMargin.help':
    'Das Wievielfache des nötigen Moments der Servo als Nennmoment haben soll.',

  'friction.startingFactor.label': 'Anlauffaktor',
  'friction.startingFactor.help':
    'Das Wievielfache der Reibung im Lauf ein Lager hemmt, bevor es zu drehen beginnt: bis 2.',

  'air.section.label': 'Blattprofil',
  'air.section.help':
    'Woher Auftrieb, Widerstand und Moment des Profils kommen: das eingebaute symmetrische Modell oder eine Tabelle aus einer Datei.',
  'air.section.builtIn': 'Eingebaut, symmetrisch',
  'air.section.table': 'Tabelle aus einer Datei',
  'air.tipLoss.label': 'Spitzenverlust',
  'air.tipLoss.help': 'Prandtls Verlust an Auftrieb zur Blattspitze hin.',
  'air.rootLoss.label': 'Wurzelverlust',
  'air.rootLoss.help': 'Prandtls Verlust an Auftrieb zur Blattwurzel hin.',

  'bladeBolt.hold.label': 'Blatt auf seinem Bolzen',
  'bladeBolt.hold.help':
    'Geklemmt: behält den Winkel, in dem es gezeichnet ist. Frei: schwenkt auf dem Bolzen, bis sein Zug durch ihn geht.',
  'bladeBolt.hold.clamped': 'Geklemmt',
  'bladeBolt.hold.free': 'Frei schwenkend',
  'bladeBolt.frictionCoefficient.label': 'Reibung am Bolzen',
  'bladeBolt.frictionCoefficient.help':
    'Reibungszahl zwischen Blatt, Bolzen und Wangen: trocken 0,1 bis 0,2.',
  'bladeBolt.clampForceN.label': 'Klemmkraft',
  'bladeBolt.clampForceN.help':
    'Kraft, mit der der Bolzen die Wangen auf die Blattwurzel drückt; 0, wo er lose bleibt.',

  'clearance.wantedGapMm.label': 'Gewünschter Abstand',
  'clearance.wantedGapMm.help':
    'Der kleinste Abstand, den jedes drehende Teil auf seinem ganzen Weg von jeder Sperrzone halten muss.',

  'tolerance.generalClass.label': 'Toleranzklasse',
  'tolerance.generalClass.help':
    'Klasse nach ISO 2768-1 für jede Länge ab 0,5 mm und jeden Winkel ohne eigene Toleranz. Zeilen eines Katalogs und Gewinde gelten, wie sie sind.',
  'tolerance.generalClass.fine': 'ISO 2768-1 f',
  'tolerance.generalClass.medium': 'ISO 2768-1 m',
  'tolerance.generalClass.coarse': 'ISO 2768-1 c',
  'tolerance.generalClass.none': 'Keine',
  'tolerance.densityPercent.label': 'Dichte',
  'tolerance.densityPercent.help':
    'Wie weit die Dichte jedes Werkstoffs nach beiden Seiten von ihrem Wert abweichen darf.',
  'tolerance.distribution.label': 'Verteilung',
  'tolerance.distribution.help':
    'Gleichmäßig: überall zwischen den Grenzen gleich oft. Normal: um die Mitte, die Grenzen bei drei Standardabweichungen.',
  'tolerance.distribution.uniform': 'Gleichmäßig',
  'tolerance.distribution.normal': 'Normal, Grenzen bei 3 σ',
  'tolerance.targetForceN.label': 'Zielkraft',
  'tolerance.targetForceN.help':
    'Die Stangenkraft soll im genutzten Bereich nach beiden Seiten darunter bleiben.',
  'tolerance.samples.label': 'Stichproben',
  'tolerance.samples.help': 'Wie viele Köpfe gewürfelt werden.',
  'tolerance.seed.label': 'Startzahl',
  'tolerance.seed.help':
    'Anfang der Zufallszahlen: Dieselbe Startzahl gibt dieselben Köpfe, Bit für Bit.',
  'tolerance.balanceGrade.label': 'Gütestufe G',
  'tolerance.balanceGrade.help':
    'Gütestufe nach ISO 21940-11, die der Rotor so gefertigt halten soll, mm/s; leer: nicht verlangt.',
};
