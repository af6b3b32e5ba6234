import type { FILES as EN } from '../en/files';

/** Körperdateien, Bilder und Tabellen. */
export const FILES = {
  'files.title': 'Dateien zum Mitnehmen',
  'files.saved': '{file} gesichert, {size}.',
  'files.handed': 'Dem Browser zum Herunterladen als {file} übergeben, {size}.',
  'files.failed': 'Nicht gesichert: {reason}',
  'files.busy': 'Wird gemacht…',
  'files.empty': 'Nichts mit einem Körper ist gewählt: Es gibt nichts zu sichern.',
  'files.inIt': 'Enthalten: {parts}.',
  'files.leftOut': 'Weggelassen: {parts}.',
  'files.leftOutPart': '{name} ({reason})',
  'files.reason.hidden': 'ausgeblendet',
  'files.reason.keepOut': 'eine Sperrzone, kein Teil',
  'files.reason.pointMass': 'ein Massenpunkt hat keinen Körper',
  'files.more': '{parts} und {count} weitere',

  'files.solids': 'Körperdateien',
  'files.what': 'Was',
  'files.what.head': 'Blatthalter mit allem, was er trägt',
  'files.what.chosen': 'Mehrere Teile',
  'files.what.part': 'Ein Teil',
  'files.where.head': 'Wie er auf der Bühne steht, bei {pitch} Einstellwinkel, Z längs der Welle.',
  'files.where.part': 'In seinem eigenen System, gleich bei welchem Einstellwinkel.',
  'files.part': 'Teil',
  'files.chosen': 'Teile in der Datei',
  'files.format': 'Format',
  'files.format.stl': 'STL, Dreiecke',
  'files.format.threeMf': '3MF, Dreiecke mit Einheit',
  'files.format.glb': 'GLB, für Betrachter',
  'files.format.step': 'STEP, wahre Flächen',
  'files.unit': 'Einheit',
  'files.unit.mm': 'Millimeter',
  'files.unit.in': 'Zoll',
  'files.fineness': 'Runde Wände',
  'files.fineness.coarse': 'grob, {count} Flächen je Umlauf',
  'files.fineness.standard': 'normal, {count} Flächen je Umlauf',
  'files.fineness.fine': 'fein, {count} Flächen je Umlauf',
  'files.fineness.veryFine': 'sehr fein, {count} Flächen je Umlauf',
  'files.deviation':
    '{count} Dreiecke. Ihre Ecken liegen auf den wahren Flächen; dazwischen weichen sie höchstens {deviation} ab.',
  'files.deviationFlat': '{count} Dreiecke. Jede Fläche ist eben: Die Dreiecke sind exakt.',
  'files.picture':
    '{name} ist ein Körper aus einer Datei: Seine Dreiecke sind die, die der Entwurf enthält.',
  'files.note.stl':
    'STL nennt keine Einheit und keinen Namen. Als {unit} öffnen; nur der Text am Anfang sagt es.',
  'files.note.threeMf':
    'Nennt seine Einheit, benennt Teile und Werkstoffe und trägt den Entwurf als Datei in sich.',
  'files.note.glb':
    'In Metern und mit Y nach oben, wie das Format es verlangt; Namen und Werkstoffe sind darin.',
  'files.note.step':
    'Zylinder, Kegel, Kugeln und Ebenen als solche, ein Körper je Werkstoff, keine Dreiecke. Nennt seine Einheit.',
  'files.threads':
    'Gewinde, wo vorhanden, sind glatte Zylinder des mittleren Querschnitts, so wie sie gewogen werden.',
  'files.noStep':
    'Nicht in STEP: {parts}. Blätter und Körper aus Dateien haben hier keine wahren Flächen; als 3MF nehmen.',
  'files.noStepAtAll':
    'Nichts davon kann STEP werden: Blätter und Körper aus Dateien haben hier keine wahren Flächen. Stattdessen 3MF nehmen.',
  'files.kernel':
    'STEP zu schreiben braucht einen CAD-Kern von {size}, geholt von dort, woher diese Seite kommt, und erst auf Knopfdruck.',
  'files.kernelLicence': 'Open CASCADE, LGPL-2.1: Lizenz',
  'files.make': 'STEP machen',
  'files.makeAgain': 'STEP neu machen',
  'files.loading': 'CAD-Kern wird geholt und gestartet…',
  'files.making': 'Teil {done} von {total}…',
  'files.writing': 'Datei wird geschrieben…',
  'files.cancel': 'Abbrechen',
  'files.cancelled': 'Abgebrochen. Nichts wurde gemacht.',
  'files.stepFailed': 'Der CAD-Kern ist gescheitert: {reason}',
  'files.stepNoKernel':
    'Nichts wurde gemacht: Der CAD-Kern ist noch nicht in diesem Browser und war nicht zu holen. Er braucht das Netz einmal.',
  'files.stepOutdated': 'Kopf oder Auswahl wurde seither geändert: neu machen.',
  'files.stepMade':
    'Gemacht: {count} Körper, {size}. Der Kern findet das Volumen jedes Teils bis auf {error} gleich der geschlossenen Formel.',
  'files.stepMadeOne':
    'Gemacht: ein Körper, {size}. Der Kern findet sein Volumen bis auf {error} gleich der geschlossenen Formel.',
  'files.stepApart':
    'Nebeneinander, da der Kern ihre Stücke nicht sauber verband: {parts}. Die Volumen stimmen; Wände zwischen berührenden Stücken bleiben.',
  'files.save': '{format} sichern',
  'files.description': '{title}. {threads} Eine Schätzung: was mitgerechnet ist, steht im Entwurf.',

  'files.material.density': 'Dichte {density} kg/m3',
  'files.material.both': '{name}, {density} kg/m3',
  'files.material.none': 'Kein Werkstoff genannt',

  'files.pictures': 'Bilder',
  'files.which': 'Bild',
  'files.which.stage': 'Bühne',
  'files.which.dial': 'Winkelbild',
  'files.which.chart': 'Kraftdiagramm',
  'files.pictureFormat': 'Format',
  'files.png': 'PNG, Bildpunkte',
  'files.svg': 'SVG, Linien und Text',
  'files.width': 'Breite, {unit}',
  'files.widthName': 'Breite',
  'files.widthPixels': 'Breite, Bildpunkte',
  'files.density': 'Feinheit',
  'files.perInch': '{count} Bildpunkte je Zoll',
  'files.shape': 'Form',
  'files.words': 'Titel und Bedingungen darüber',
  'files.pictureSize': '{width} × {height} Bildpunkte, {paper} auf Papier.',
  'files.svgSize': '{paper}, scharf in jeder Größe; Text bleibt Text.',
  'files.stageSvg':
    'Die Bühne besteht aus Bildpunkten: Ihr SVG enthält sie, wie sie sind, in ihrer Größe auf Papier. Die beiden anderen sind Linien und Text.',
  'files.stageNote':
    'Die Bühne, wie man sie sieht, in den Farben der hellen Seite auf Weiß, ohne Griffe und Auswahlmarken.',
  'files.noStage':
    'Es gibt keine Bühne für ein Bild: sie ist weggeklappt, noch nicht da, oder dieser Browser kann sie nicht zeichnen.',
  'files.noPicture':
    'Der Browser zeichnet kein Bild von {width} × {height} Bildpunkten. Ein kleineres versuchen.',
  'files.widthFault': 'Breite: {low} bis {high} Bildpunkte, nicht {value}.',
  'files.widthLengthFault': 'Breite: {low} bis {high}, nicht {value}.',
  'files.dialTitle': 'Winkelbild bei {pitch}, von der Blattspitze gesehen',
  'files.rotorLine': '{rpm} rpm, genutzter Bereich ±{used}°.',

  'files.tables': 'Tabellen, CSV',
  'files.curve': 'Kurve sichern',
  'files.curveNote':
    'Von −90° bis +90°: Moment eines Blatthalters und Anteil jedes Teils, Energie, Kräfte, Reibung, Schieber, Servo. Leer, wo es keinen Wert gibt.',
  'files.step': 'Einstellwinkel in Schritten von',
  'files.partsTable': 'Teile sichern',
  'files.partsNote':
    'Masse, Schwerpunkt und zweite Momente jedes Teils im Haltersystem, sein Anteil an J_yy − J_zz und die Summe.',
  'files.noTables': 'Noch gibt es kein Teil, also keine Tabelle zu sichern.',
  'files.loads': 'Lasten sichern',
  'files.loadsNote':
    'Bei {pitch} Einstellwinkel und Entwurfsdrehzahl: Züge, Lager, Bolzen, Grenzen mit Quelle.',
  'files.csvNote':
    'Einheiten in der Kopfzeile, Bedingungen darüber in Zeilen, die mit # beginnen, Dezimalpunkt, UTF-8. In N, mm, g, was die Seite auch zeigt.',

  'files.design': 'Der Entwurf selbst',
  'files.designNote':
    'Eine Kopie des Entwurfs, wie er jetzt ist, die sich hier wieder öffnen lässt. Ein Link, der den Entwurf enthält: Teilen, oben auf der Seite.',
  'files.saveCopy': 'Kopie sichern',

  'csv.design': 'Entwurf: {name}',
  'csv.note': 'Anmerkung: {note}',
  'csv.drag': 'Reibung im Stand {rows}',
  'csv.yes': 'ja',
  'csv.no': 'nein',
  'csv.section.rotor': 'Rotor',
  'csv.section.counted': 'Mitgerechnet',
  'csv.section.control': 'Steuerung',
  'csv.section.friction': 'Reibung',
  'csv.section.air': 'Luft',
  'csv.section.bladeBolt': 'Blatt am Bolzen',
  'csv.section.clearance': 'Abstand',
  'csv.section.tolerance': 'Toleranzen',
  'csv.signsMoment':
    'Momente gelten für einen Blatthalter, positiv hebt die Vorderkante; Stangenkraft positiv bei Zug.',
  'csv.signsSlider':
    'Schieberkraft ist, was die Steuerung längs der Welle auf den Schieber gibt, alle Blatthalter; Servomoment, was er hält.',
  'csv.signsFriction':
    'Reibung ist das halbe Band: Zwischen Moment - Reibung und Moment + Reibung bewegt sich nichts.',
  'csv.pitch': 'Einstellwinkel (deg)',
  'csv.moment': 'Moment (N mm)',
  'csv.share': 'Anteil {name} (N mm)',
  'csv.shareAir': 'der Luft',
  'csv.shareLag': 'des Blatts am Bolzen',
  'csv.energy': 'Energie (mJ)',
  'csv.force': 'Stangenkraft (N)',
  'csv.friction': 'Reibung (N mm)',
  'csv.frictionForce': 'Reibung an der Steuerstange (N)',
  'csv.travel': 'Schieberweg (mm)',
  'csv.slider': 'Schieberkraft (N)',
  'csv.servo': 'Servomoment (N mm)',
  'csv.part': 'Teil',
  'csv.kind': 'Art',
  'csv.counts': 'Zählt',
  'csv.mass': 'Masse (g)',
  'csv.centre': 'Schwerpunkt {axis} (mm)',
  'csv.second': 'J_{axes} (g mm2)',
  'csv.difference': 'J_yy - J_zz (g mm2)',
  'csv.shareOf': 'Anteil an J_yy - J_zz (%)',
  'csv.leftOut': 'nicht mitgezählt',
  'csv.inLinkage': 'im Gestänge',
  'csv.inSum': 'in der Summe',
  'csv.sum': 'Summe',
  'csv.frame':
    'Haltersystem: Ursprung auf der Verstellachse an der Welle, x nach außen, y zur Vorderkante, z = x kreuz y.',
  'csv.secondNote':
    'J sind zweite Momente (Integral der Koordinaten über die Masse) um diesen Ursprung, keine Trägheitsmomente; um die Verstellachse hat ein Teil J_yy + J_zz.',
  'csv.shareNote':
    'Anteile gelten von der Summe aller Beträge, damit sie endlich bleiben, wo Teile sich aufheben.',
  'csv.judgedAt': 'Beurteilt bis {rpm} rpm: {text}',
  'csv.loadsAt': 'Lasten bei {pitch} deg Einstellwinkel und {rpm} rpm, eines Blatthalters.',
  'csv.load': 'Last',
  'csv.value': 'Wert (in seiner Einheit)',
  'csv.unit': 'Einheit',
  'csv.limit': 'Grenze (in ihrer Einheit)',
  'csv.use': 'Anteil an der Grenze (%)',
  'csv.source': 'Quelle der Grenze',
  'csv.pull': 'Zug des Teils',
  'csv.axial': 'Zug längs der Verstellachse',
  'csv.thrust': 'Schub eines Blatts (Schätzung)',
  'csv.flapMass': 'Schlagmoment an den Lagern, aus Masse',
  'csv.flapThrust': 'Schlagmoment an den Lagern, aus Schub',
  'csv.radial': 'Lager, radial',
  'csv.bearingAxial': 'Lager, axial',
  'csv.rating': 'Lager, äquivalente Last gegen Tragzahl',
  'csv.boltPull': 'Zug des Blatts am Bolzen',
  'files.carries': 'Der ganze Entwurf liegt in der Datei, die sich hier wieder öffnen lässt',
} satisfies Readonly<Record<keyof typeof EN, string>>;
