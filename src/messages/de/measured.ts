import type { MEASURED as EN } from '../en/measured';

export const MEASURED = {
  'phrase.measured': 'Das Gemessene',
  'phrase.swings': 'Die Messung am Zweifadenpendel',
  'measured.title': 'Gemessen',
  'measured.letGo':
    'Was am früheren Teil gemessen war, fiel mit ihm weg. Rückgängig holt beides zurück.',
  'measured.some': 'in Gebrauch',
  'measured.lead': 'Was Waage, Schneide und Stoppuhr sagen, geht der Zeichnung vor.',
  'measured.none': 'nicht gemessen',
  'measured.limitsStandard': '{help} Leer: {standard}.',
  'measured.typedNotANumber': '{field}: „{text}“ ist keine Zahl.',
  'measured.mass': 'Gewogene Masse',
  'measured.massHelp':
    'Das Teil allein auf der Waage. Seine Dichte wird angepasst, seiner Form wird getraut.',
  'measured.massStep': 'Anzeigeschritt der Waage',
  'measured.massStepHelp': 'Der kleinste Unterschied, den die Waage zeigt.',
  'measured.centreX': 'Schwerpunkt x',
  'measured.centreXSpan':
    'Längs des Blatts ab der Bolzenachse, nach außen positiv, in den Achsen des Blatts: Schwenken zählt nicht.',
  'measured.centreXPart': 'Längs des eigenen x des Teils, ab seinem Ursprung.',
  'measured.centreY': 'Schwerpunkt y',
  'measured.centreYSpan':
    'Längs der Profilsehne ab der Bolzenachse, zur Vorderkante positiv, in den Achsen des Blatts.',
  'measured.centreYPart': 'Längs des eigenen y des Teils, ab seinem Ursprung.',
  'measured.centreZ': 'Schwerpunkt z',
  'measured.centreZSpan': 'In Dickenrichtung ab der Dickenmitte am Bolzen, nach oben positiv.',
  'measured.centreZPart': 'Längs des eigenen z des Teils, ab seinem Ursprung.',
  'measured.centreStep': 'Teilung des Maßstabs',
  'measured.centreStepHelp': 'Der kleinste Unterschied, auf den die Schwerpunkte abgelesen wurden.',
  'measured.pendulum': 'Zweifadenpendel…',
  'measured.timed': 'Trägheitsmomente, gestoppt',
  'measured.forget': 'Gemessenes vergessen',
  'measured.about.span': 'Blattlänge (x)',
  'measured.about.chord': 'Profilsehne (y)',
  'measured.about.thickness': 'Dicke (z)',
  'measured.notTimed': 'nicht gestoppt',
  'measured.report': 'Gegen die Zeichnung',
  'measured.what.mass': 'Masse',
  'measured.what.centreX': 'Schwerpunkt x',
  'measured.what.centreY': 'Schwerpunkt y',
  'measured.what.centreZ': 'Schwerpunkt z',
  'measured.what.inertiaX': 'Trägheitsmoment um die Blattlänge',
  'measured.what.inertiaY': 'Trägheitsmoment um die Profilsehne',
  'measured.what.inertiaZ': 'Trägheitsmoment um die Dicke',
  'measured.values': '{measured} gemessen, {modelled} gezeichnet',
  'measured.agrees': '{difference}, innerhalb der erwarteten {expected}.',
  'measured.disagrees':
    '{difference}, über die erwarteten {expected} hinaus: Zeichnung prüfen oder neu messen.',
  'measured.more': '{size} mehr',
  'measured.less': '{size} weniger',
  'measured.further': '+{size}',
  'measured.short': '−{size}',
  'measured.same': 'Gleich',
  'measured.density': 'Dichte mit {factor} malgenommen, auf {density}.',
  'measured.densities': 'Jede Dichte mit {factor} malgenommen.',
  'measured.inUse': 'In Gebrauch: {mass}; Schwerpunkt {centre}.',
  'measured.asDrawn': 'Wie gezeichnet: {mass}; Schwerpunkt {centre}.',
  'measured.noMass': 'Die Maße ergeben keine Masse zum Vergleichen.',
  'measured.assumed':
    '± ist eine Standardunsicherheit; erwartet wird das Doppelte beider zusammen. Zeichnung: {percent} angenommen für gezeichnete Masse und Trägheit{ranges}.',
  'measured.assumedRange': ', und die Dichte von {material} irgendwo von {low} bis {high}',
  'measured.impossible': 'Das kann nicht zusammen wahr sein: {detail}.',
  'measured.keptNone': '{reason} Nichts wurde übernommen.',
  'measured.sheet': 'Zweifadenpendel: {part}',
  'measured.steps': 'Schritte',
  'measured.step.balance': 'Schwerpunkt',
  'measured.step.span': 'Um die Blattlänge',
  'measured.step.chord': 'Um die Profilsehne',
  'measured.step.thickness': 'Um die Dicke',
  'measured.back': 'Zurück',
  'measured.backWhy': 'Das ist der erste Schritt',
  'measured.next': 'Weiter',
  'measured.nextWhy': 'Das ist der letzte Schritt',
  'measured.print': 'Blatt zum Ausfüllen drucken',
  'measured.intro':
    'An zwei Fäden aufgehängt und ein wenig verdreht, schwingt ein Teil umso langsamer, je weiter seine Masse verteilt ist. Die Schwingungsdauer ergibt sein Trägheitsmoment.',
  'measured.which':
    'Die Blattlänge kommt zuerst: Sie legt fest, wie weit die Masse längs der Profilsehne streut, und das dreht den Blatthalter. Die beiden anderen legen die Streuung längs des Blatts fest. Eine Messung hilft; drei prüfen einander.',
  'measured.balance1':
    'Das Teil quer über eine Schneide oder die Kante eines Stahlmaßstabs legen und verschieben, bis es nach keiner Seite kippt.',
  'measured.balance2':
    'Die Kante anzeichnen, das Teil umdrehen, Ende gegen Ende, und wiederholen: Die Mitte zwischen beiden Strichen ist der Schwerpunkt.',
  'measured.balance3':
    'Ab der Bolzenachse messen: längs des Blatts, und mit der Kante längs des Blatts gelegt, längs der Profilsehne.',
  'measured.balanceSpan': 'Längs des Blatts',
  'measured.balanceChord': 'Längs der Profilsehne',
  'measured.hang.span':
    'Das Teil mit der Blattlänge senkrecht, Spitze nach unten, unter einen leichten Querstab (das Gehänge) hängen. Die Fäden halten die Stabenden; der Schwerpunkt liegt unter der Stabmitte.',
  'measured.hang.chord':
    'Das Teil hochkant aufhängen, Vorderkante oben, Blattlänge waagrecht. Die Fäden halten es gleich weit innen und außen vom Schwerpunkt.',
  'measured.hang.thickness':
    'Das Teil flach in zwei Schlaufen legen, Blattlänge waagrecht. Die Schlaufen halten es gleich weit innen und außen vom Schwerpunkt.',
  'measured.rule1': 'Gleich lange Fäden, dünn, senkrecht und parallel, oben fest angebracht.',
  'measured.rule2': 'Der Schwerpunkt in der Mitte zwischen den Fäden.',
  'measured.rule3':
    'Ein wenig verdrehen, weniger als 10° nach jeder Seite, und ohne Stoß loslassen. Pendelt es auch seitwärts, anhalten und neu beginnen.',
  'measured.rule4':
    '10 bis 50 volle Schwingungen zählen, hin und her. Beim Starten der Uhr, wo es am schnellsten läuft, „null“ sagen. Stille Luft: Zugluft bremst ein flaches Teil.',
  'measured.rule5':
    'Ein Gehänge: wiegen und allein auf dieselbe Weise stoppen, für sein eigenes Moment. Es wird abgezogen.',
  'measured.spacing': 'Fadenabstand',
  'measured.spacingHelp': 'Von Faden zu Faden, die ganze Strecke.',
  'measured.length': 'Fadenlänge',
  'measured.lengthHelp': 'Freie Länge eines Fadens, vom Festpunkt bis zum Teil.',
  'measured.swings': 'Volle Schwingungen',
  'measured.swingsHelp': 'Wie viele gezählt wurden, hin und her.',
  'measured.seconds': 'Zeit',
  'measured.secondsHelp': 'Für alle gezählten Schwingungen.',
  'measured.readings': 'Schritte, Ausschlag und Gehänge',
  'measured.spacingStep': 'Teilung des Maßstabs',
  'measured.spacingStepHelp':
    'Der kleinste Unterschied, auf den Abstand und Länge abgelesen wurden.',
  'measured.timeStep': 'Schritt der Zeitmessung',
  'measured.timeStepHelp':
    'Wie weit die Zeit insgesamt falsch sein kann, die Hand an der Uhr eingerechnet.',
  'measured.amplitude': 'Ausschlag nach einer Seite',
  'measured.amplitudeHelp': 'Das Mittel aus erstem und letztem; die Zeit wird dafür berichtigt.',
  'measured.cradleMass': 'Masse des Gehänges',
  'measured.cradleMassHelp': 'Was mit dem Teil hängt, allein gewogen.',
  'measured.cradleMoment': 'Moment des Gehänges',
  'measured.cradleMomentHelp':
    'Sein eigenes Trägheitsmoment um dieselbe Senkrechte, allein gestoppt.',
  'measured.result': 'Ergebnis',
  'measured.missing': 'Noch auszufüllen: {fields}.',
  'measured.period': 'Eine Schwingung dauert {period} s.',
  'measured.resultMoment': 'Trägheitsmoment {moment}; gezeichnet {modelled}.',
  'measured.withWeighed': 'Berechnet mit der gewogenen Masse, {mass}.',
  'measured.withModelled':
    'Nicht gewogen: berechnet mit der gezeichneten Masse, {mass}. Das Teil zuerst wiegen; um so viel, wie die Masse falsch ist, ist es auch das Moment.',
  'measured.worst': 'Der größte Teil der Unsicherheit ({share} von {total}) ist {source}.',
  'measured.worst.mass': 'die Masse: eine feinere Waage nehmen',
  'measured.worst.spacing':
    'der Fadenabstand: feiner ablesen oder die Fäden weiter auseinandersetzen',
  'measured.worst.length': 'die Fadenlänge: feiner ablesen oder längere Fäden nehmen',
  'measured.worst.time': 'die Zeit: mehr Schwingungen zählen',
  'measured.wide':
    'Die Ausschläge waren groß: Über 10° wächst die Berichtigung schnell. Weniger verdrehen.',
  'measured.refused': '{reason} Das zuvor Übernommene bleibt.',
  'measured.remove': 'Diese Messung entfernen',
  'measured.drawing.spacing': 'Abstand',
  'measured.drawing.length': 'Länge',
  'measured.drawing.cradle': 'Gehänge',
  'measured.drawing.edge': 'Vorderkante',
  'measured.drawing.bolt': 'Bolzenachse',
  'measured.drawing.distance': 'Schwerpunkt',
  'measured.drawing.span':
    'Das Teil hängt mit der Spitze nach unten an einem Querstab an zwei senkrechten Fäden; es dreht sich um seine Blattlänge, die mitten zwischen ihnen liegt.',
  'measured.drawing.chord':
    'Das Teil hängt hochkant an zwei senkrechten Fäden, Vorderkante oben; es dreht sich um seine Profilsehne, die mitten zwischen ihnen liegt.',
  'measured.drawing.thickness':
    'Das Teil liegt flach in zwei Schlaufen an zwei senkrechten Fäden; es dreht sich um die Senkrechte durch seinen Schwerpunkt, mitten zwischen ihnen.',
  'measured.drawing.balance':
    'Das Teil liegt quer über einer Schneide; gemessen wird der Abstand von der Bolzenachse zur Schneide.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
