import type { IMPORT as EN } from '../en/import';

/** Ein Körper aus einer Netz- oder CAD-Datei. */
export const IMPORT = {
  'import.title': 'Ein Körper aus {file}',
  'import.waiting': 'Danach: noch {count}.',
  'import.step.open': 'Datei wird geöffnet',
  'import.step.unpack': 'Wird entpackt',
  'import.step.read': 'Dreiecke werden gelesen',
  'import.step.kernel': 'CAD-Kern wird geladen',
  'import.step.check': 'Prüfung, ob die Oberfläche geschlossen ist',
  'import.step.crossings': 'Suche nach Stellen, an denen die Oberfläche sich durchdringt',
  'import.step.picture': 'Bild wird erstellt',
  'import.cancel': 'Abbrechen',
  'import.close': 'Schließen',
  'import.refused': 'Die Datei wurde nicht angenommen. Der Entwurf ist wie zuvor.',
  'import.fault.empty': 'Die Datei ist leer.',
  'import.fault.unknownFormat':
    'Das ist weder STL noch 3MF, GLB, OBJ oder STEP, was auch der Name sagt („.{extension}“).',
  'import.fault.fileTooLarge': 'Die Datei hat {bytes} MB; höchstens {limit} MB werden geöffnet.',
  'import.fault.tooManyTriangles':
    'Die Datei hat {count} Dreiecke; höchstens {limit} werden angenommen. In dem Programm verringern, aus dem sie stammt.',
  'import.fault.noTriangles': 'In dieser Datei ist keine Oberfläche.',
  'import.fault.malformed': 'Die Datei lässt sich nicht lesen: Sie {detail}.',
  'import.fault.unsupported': 'Die Datei braucht etwas, das hier nicht gelesen wird: {name}.',
  'import.fault.unpacksTooLarge':
    'Entpackt übersteigt die Datei die Grenze von {limit}: Sie wurde nicht weiter entpackt.',
  'import.fault.cancelled': 'Abgebrochen.',
  'import.fault.readerFailed': 'Das Lesen wurde aufgegeben: {detail}.',
  'import.verdict.sound': 'Geschlossen und fehlerfrei: Die Masse ist exakt bestimmbar.',
  'import.verdict.crossing':
    'Geschlossen, aber Teile der Oberfläche durchdringen sich. Was in zwei Hüllen zugleich liegt, zählt doppelt.',
  'import.verdict.cracked':
    'Rissig: Die Oberfläche ist nicht geschlossen, also gibt es kein Volumen. Nicht angenommen.',
  'import.openEdges': 'Offene Kanten: {count}. Etwas fehlt oder ist nicht verbunden.',
  'import.unorientedEdges':
    'Kanten, deren Seiten gegeneinander gerichtet sind: {count}. Die Oberfläche lässt sich nicht nach außen wenden.',
  'import.crowdedEdges': 'Kanten, an denen mehr als zwei Dreiecke liegen: {count}.',
  'import.crossings': 'Paare von Dreiecken, die sich durchdringen: {count}.',
  'import.crossingsMore':
    'Paare von Dreiecken, die sich durchdringen: {count}, vielleicht mehr; die Suche wurde abgebrochen.',
  'import.countedTwice': 'Mehrfach gezähltes Volumen, geschätzt: {share} % des Ganzen.',
  'import.flipped': 'Dreiecke, nach ihren Nachbarn gewendet: {count}.',
  'import.insideOut': 'Die ganze Oberfläche war verkehrt herum und wurde gewendet.',
  'import.shellsTurned': 'Verkehrte Hüllen, gewendet: {count}.',
  'import.joined':
    'Punkte über Risse hinweg verbunden, schmaler als {tolerance} der Dateieinheit: {count}.',
  'import.dropped': 'Dreiecke ohne Fläche oder doppelt, weggelassen: {count}.',
  'import.triangles': '{count} Dreiecke, {shells}.',
  'import.shellsOne': 'eine Hülle',
  'import.shells': '{count} Hüllen, davon {cavities} Hohlräume',
  'import.reduced': 'Gezeichnet mit {count} Dreiecken; gewogen mit allen.',
  'import.note.extensionDiffers':
    'Der Name endet auf „.{extension}“, der Inhalt ist aber {format}.',
  'import.note.trailingBytes': '{bytes} Byte nach dem letzten Dreieck wurden übergangen.',
  'import.note.leftOut': 'Weggelassen: {count} {what}.',
  'import.note.lines': 'Linien oder Punkte',
  'import.note.supports': 'Stützkörper',
  'import.note.skins': 'bewegte Häute',
  'import.note.concaveFaces':
    '{count} nicht konvexe Flächen wurden fächerförmig zerlegt: Form prüfen.',
  'import.note.tessellated':
    'Gekrümmte Flächen wurden in ebene zerlegt, höchstens {deflection} mm neben der wahren Fläche.',
  'import.name': 'Name',
  'import.unit': 'Die Zahlen der Datei sind',
  'import.unitSize': '{unit}: {size} lang',
  'import.unit.mm': 'Millimeter',
  'import.unit.cm': 'Zentimeter',
  'import.unit.m': 'Meter',
  'import.unit.in': 'Zoll',
  'import.unit.micron': 'Mikrometer',
  'import.unit.ft': 'Fuß',
  'import.unitSlip':
    'In {stated} wäre das {size} lang. Einheit verwechselt? {likely} ergäbe {likelySize}.',
  'import.unitUnlikely':
    'Keine Einheit ergibt eine wahrscheinliche Größe für einen Blatthalter oder seine Teile: {size} in {unit}.',
  'import.material': 'Werkstoff',
  'import.density': '{name}, {density} kg/m³',
  'import.weighed': 'Gewogene Masse, {unit}',
  'import.weighedHelp': 'Leer lassen, wenn nicht gewogen. Sie geht dem Werkstoff vor.',
  'import.volume': 'Volumen {volume} cm³; {mass} in diesem Werkstoff.',
  'import.accept': 'Ich nehme hin, dass durchdrungenes Volumen doppelt zählt.',
  'import.put': 'Einsetzen',
  'import.putAndPlace': 'Einsetzen und an den Bohrungen ausrichten',
  'import.whyMass': 'Die gewogene Masse ist nicht verstanden',
  'import.whyCrossing': 'Zuerst hinnehmen, dass durchdrungenes Volumen doppelt zählt',
  'import.whyLong': 'In dieser Einheit ist er länger als 10 m',
  'import.role': 'Es ist',
  'import.role.part': 'ein Teil für sich',
  'import.role.grip': 'der Blatthalter: Er trägt Bolzen, Blatt und Hebel',
  'import.role.keepOut': 'eine Sperrzone: Drehende Teile müssen davon frei bleiben',
  'import.takenKeepOut': '{name} steht, wo die Datei es hat. An seinen Platz schieben.',
  'import.taken':
    '{name} wurde an der Welle eingesetzt. Verschieben oder an den Bohrungen ausrichten.',
  'import.failed': 'Die Datei konnte nicht geöffnet werden: {reason}',
  'import.fault.readerEnded':
    'Der Browser hat das Einlesen zweimal beendet: vielleicht braucht es mehr Speicher, als da ist. Noch einmal versuchen und weniger anderes offen haben.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
