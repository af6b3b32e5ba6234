import type { DRAWING as EN } from '../en/drawing';

/** Die Werkstattzeichnung und ihr Raum. */
export const DRAWING = {
  'drawing.title': 'Werkstattzeichnung',
  'drawing.part': 'Teil',
  'drawing.sheet': 'Blatt',
  'drawing.auto': 'Was passt',
  'drawing.portrait': 'hoch',
  'drawing.landscape': 'quer',
  'drawing.projection': 'Projektion',
  'drawing.first': 'Methode 1',
  'drawing.third': 'Methode 3',
  'drawing.units': 'Längen in',
  'drawing.mm': 'mm',
  'drawing.in': 'Zoll',
  'drawing.svg': 'SVG',
  'drawing.dxf': 'DXF',
  'drawing.pdf': 'PDF',
  'drawing.svgHelp': 'Das Blatt als SVG sichern, in seiner eigenen Größe',
  'drawing.dxfHelp':
    'Als DXF sichern, in der Größe des Teils und in mm, gleich in welcher Einheit bemaßt ist',
  'drawing.pdfHelp': 'Das Blatt als PDF sichern, in seiner eigenen Größe',
  'drawing.noPart':
    'Es gibt keinen Bolzen, keine Mutter, keine Scheibe und kein Gewicht zu zeichnen.',
  'drawing.preview': 'Zeichnung von {part}, {scale} auf {sheet}',
  'drawing.previewKeys':
    'Mausrad, Plus und Minus: größer und kleiner. Ziehen, Pfeiltasten: verschieben. 0: ganzes Blatt.',
  'drawing.fit': 'Ganzes Blatt',
  'drawing.larger': 'Größer',
  'drawing.smaller': 'Kleiner',
  'drawing.weighed': 'Gewogen',
  'drawing.weighedHelp': 'Was das fertige Teil auf der Waage zeigt.',
  'drawing.step': 'Schritt',
  'drawing.stepHelp': 'Kleinster Schritt der Waage.',
  'drawing.shank': 'Schaft Ø{size}',
  'drawing.shankFit': 'Schaft Ø{size} h13',
  'drawing.point': 'Kuppe Ø{size} × 45°',
  'drawing.chamfer': '{size} × 45°',
  'drawing.chamferBoth': '{size} × 45°, beide Seiten',
  'drawing.chamferHex': '{size} × 30° an den Ecken',
  'drawing.chamferHexBoth': '{size} × 30° an den Ecken, beide Seiten',
  'drawing.socket': 'Innensechskant SW {across}, {depth} tief',
  'drawing.flats': 'SW {size}',
  'drawing.runOut': 'Auslauf {size}',
  'drawing.flatTop': 'Ø{size} eben',
  'drawing.sinkOne': 'Ø{size} × 90°',
  'drawing.sinkBoth': 'Ø{size} × 90°, beide Enden',
  'drawing.ringBore': 'Ring innen Ø{size}',
  'drawing.threadFull': '{thread}, bis zum Kopf',
  'drawing.threadAll': '{thread}, ganze Länge',
  'drawing.through': '{thread}, durchgehend',
  'drawing.remarkRolled': 'Gewinde gerollt.',
  'drawing.remarkClass': 'Festigkeitsklasse {name}.',
  'drawing.remarkRing': 'Sicherungsring: {density} kg/m³.',
  'drawing.remarkBlind':
    'Grundloch eben gezeichnet, Gewinde bis zum Grund: so tief schneiden, wie ein Grundlochgewindebohrer reicht; eine tiefere Bohrspitze nimmt Masse und Festigkeit weg.',
  'drawing.remarkNutClass':
    'Mutternklasse passend zum Bolzen (ISO 898-2), oder das Gewinde nachweisen.',
  'drawing.remarkSqueezed':
    'Bund nach dem Gewindeschneiden zum Sichern verformt: Klemmdrehmoment nachweisen (ISO 2320).',
  'drawing.noteGeneral': 'Längen in {unit}. Allgemeintoleranzen ISO 2768-{letter}.',
  'drawing.noteGeneralInch':
    'Längen in Zoll; ihre Stellen sagen nichts über Toleranzen. Allgemeintoleranzen ISO 2768-{letter}: {rows}.',
  'drawing.generalRow': '±{deviation} bis {size}',
  'drawing.noteNoGeneral': 'Längen in {unit}. Keine Allgemeintoleranzen.',
  'drawing.noteMetricOutside': 'Gewindetoleranz 6g (ISO 965-1).',
  'drawing.noteMetricInside': 'Gewindetoleranz 6H (ISO 965-1).',
  'drawing.noteInchOutside': 'Gewindeklasse 2A (ASME B1.1).',
  'drawing.noteInchInside': 'Gewindeklasse 2B (ASME B1.1).',
  'drawing.noteSurface': 'Oberflächen ringsum Ra {rough}.',
  'drawing.noteEdges': 'Übrige Kanten ISO 13715: außen −{edge}, innen +{edge}.',
  'drawing.noteFillet':
    'Unter dem Kopf eine Rundung von mindestens R{radius}, frei von Drehriefen.',
  'drawing.noteTrue':
    'Auflageflächen rechtwinklig, Durchmesser rundlaufend zur Achse: Plan- und Rundlauf {true}.',
  'drawing.noteMatch':
    'Alle eines Rotors wiegen und auf gleiche Masse paaren: Nur so läuft er ausgewuchtet.',
  'drawing.noteWide':
    'Allgemeintoleranzen sind für eine leichte Steuerung vielleicht zu weit: Wie genau, sagt der Toleranzlauf.',
  'drawing.noteBought':
    'Nach eigener Norm gefertigt, deren Grenzen statt der Allgemeintoleranzen gelten. Wiegen.',
  'drawing.noteRound':
    'Schlüsselflächen, Bohrungen oder Rändel zum Anziehen sind nicht gezeichnet und nicht in der Masse.',
  'drawing.noteNoLock': 'Sichert sich nicht selbst.',
  'drawing.noteStrength':
    'Festigkeit wie Klasse {name}: aus einer solchen Schraube fertigen oder aus Stahl, der sie hat, mit Zeugnis.',
  'drawing.noteMass':
    'Masse: Die Waage ({step} g) zeigt {least} … {most} g; darüber oder darunter stimmt etwas nicht.',
  'drawing.noteDensity':
    'Dieses Fenster: gezeigte Toleranzen, Dichte ±{percent} %. Es beweist kein Maß.',
  'drawing.noteCaution':
    'Trägt Last bei Drehzahl: Ergebnis einer Schätzung. Hinter einer Schutzwand prüfen, langsam beginnen.',
  'drawing.noteTapers': 'Norm: {standard}.',
  'drawing.dxfScale':
    'Gezeichnet 1:1 in mm, Maßzahlen in {figures}. Für dieses Blatt im Maßstab {scale} ausgeben.',
  'drawing.check': '50 mm – vor Gebrauch nachmessen',
  'drawing.cellTitle': 'Teil',
  'drawing.cellDesign': 'Entwurf',
  'drawing.cellDrawn': 'Erstellt von',
  'drawing.cellApproved': 'Genehmigt von',
  'drawing.cellOwner': 'Eigentümer',
  'drawing.cellType': 'Dokumentenart',
  'drawing.cellTypeText': 'Teilzeichnung',
  'drawing.cellNumber': 'Sachnummer',
  'drawing.cellRevision': 'Änd.',
  'drawing.cellDate': 'Ausgabedatum',
  'drawing.cellLanguage': 'Spr.',
  'drawing.cellSheet': 'Blatt',
  'drawing.cellFormat': 'Format',
  'drawing.cellScale': 'Maßstab',
  'drawing.cellMaterial': 'Werkstoff',
  'drawing.cellMass': 'Masse',
  'drawing.cellProjection': 'Projektion',
  // Der Raum: Auswahl, Sichern, die Waage.
  'drawing.print': 'Drucken',
  'drawing.printHelp':
    'Nur das Blatt drucken, in seiner eigenen Größe: 100 % und keine Ränder wählen',
  'drawing.saving': 'Wird geschrieben…',
  'drawing.sizes': 'Maße auf der Zeichnung',
  'drawing.undrawn':
    '{part} ist weder gedreht noch sechskantig und hat hier keine Zeichnung. Sein Körper steht unter Dateien.',
  'drawing.tooBigHere':
    'In keinem Maßstab nach ISO 5455 passt die Zeichnung mit allen Hinweisen auf dieses Blatt.',
  'drawing.tooBigAll':
    'In keinem Maßstab nach ISO 5455 passt die Zeichnung auf ein Blatt bis A4. Eine kürzere Anmerkung des Entwurfs oder weniger Stellen in den Maßen würden helfen; der Körper steht unter Dateien.',
  'drawing.takeSheet': '{sheet} nehmen: passt im Maßstab {scale}',
  'drawing.mass': 'Auf der Waage',
  'drawing.massDrawn': 'Masse wie gezeichnet',
  'drawing.massWindow': 'Fenster',
  'drawing.massWindowHelp':
    'Mit jeder Länge und Dichte an dem Ende ihrer Toleranz, das das Teil am leichtesten und am schwersten macht.',
  'drawing.windowEnds': '{least} … {most}',
  'drawing.stepGrams': '{step}\u00a0g',
  'drawing.stepOwn': 'eigener…',
  'drawing.stepOwnLabel': 'Eigener Anzeigeschritt der Waage, g',
  'drawing.proof': 'Eine Waage mit Anzeigeschritt {step} muss {least} bis {most} zeigen.',
  'drawing.proofFiner':
    'Eine Waage mit Anzeigeschritt {step} ist für dieses Teil zu grob. Eine mit {finer} genügt.',
  'drawing.proofNone':
    'Keine Waage ist fein genug: Die Toleranzen lassen kein Massenfenster oder kaum eines.',
  'drawing.weighed.inside': 'Die Masse passt. Maße sind noch zu messen.',
  'drawing.weighed.undecided':
    'Weniger als ein halber Schritt vom Rand des Fensters: Diese Waage kann es nicht sagen.',
  'drawing.weighed.light': 'Um {by} zu leicht.',
  'drawing.weighed.heavy': 'Um {by} zu schwer.',
  'drawing.weighedEmpty': 'Zuerst eingeben, was die Waage zeigt.',
  'drawing.notOnStep': 'Eine Waage mit Anzeigeschritt {step} zeigt diese Zahl nicht.',
  'drawing.take': 'Übernehmen',
  'drawing.counted': 'Der Entwurf rechnet mit {mass}, gewogen.',
  'drawing.noteMassCoarse': 'Masse: Eine Waage mit {step} g ist zu grob; feiner wiegen.',
  'drawing.carries': 'SVG enthält den Entwurf',
} satisfies Readonly<Record<keyof typeof EN, string>>;
