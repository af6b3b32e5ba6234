import type { BENCH_FIT as EN } from '../en/benchFit';

/** Die Räume Anpassung, Berichtigen und Üben des Prüfstands. */
export const BENCH_FIT = {
  'benchRoom.fit': 'Anpassung',
  'benchRoom.fit.none':
    'Noch lässt sich kein Lauf auswerten. Bei drehendem Rotor Messwerte bei einigen Einstellwinkeln nehmen.',
  'benchRoom.fit.rung': 'Stufe der Aufbauleiter',
  'benchRoom.fit.rungLine': '{name} ({count})',
  'benchRoom.fit.number': 'Zahl',
  'benchRoom.fit.measured': 'Gemessen, 95 %',
  'benchRoom.fit.modelled': 'Modell',
  'benchRoom.fit.difference': 'Gemessen − Modell',
  'benchRoom.fit.undetermined': 'aus diesen Messwerten nicht bestimmbar',
  'benchRoom.fit.place': 'Der Kraftmesser zieht',
  'benchRoom.fit.place.rod': 'in einer Steuerstange',
  'benchRoom.fit.place.slider': 'am Schieber, alle Blatthalter',
  'benchRoom.fit.place.arm': 'an einem Hebel, ohne Steuerstange',
  'benchRoom.fit.pulls': 'Ein Zug bewegt den Schieber',
  'benchRoom.fit.pulls.up': 'längs +Z, mit dem Schub',
  'benchRoom.fit.pulls.down': 'längs −Z, gegen den Schub',
  'benchRoom.fit.friction': 'Reibung außer der im Stand',
  'benchRoom.fit.friction.pull': 'wächst mit dem Zug',
  'benchRoom.fit.friction.moment': 'überall ein Moment',
  'benchRoom.fit.friction.force': 'überall eine Kraft',
  'benchRoom.fit.friction.none': 'keine',
  'benchRoom.fit.zeros': 'Nullpunkt des Kraftmessers',
  'benchRoom.fit.zeros.free': 'angepasst, einer je Lauf',
  'benchRoom.fit.zeros.none': 'schon abgezogen',
  'benchRoom.fit.air': 'Luft nach Modell',
  'benchRoom.fit.air.known': 'abgezogen',
  'benchRoom.fit.air.fitted': 'mit einem Faktor angepasst',
  'benchRoom.fit.air.left': 'in den Messwerten belassen',
  'benchRoom.fit.step': 'Anzeigeschritt, wo ein Lauf ihn nicht nennt',
  'benchRoom.fit.limit': 'Messbereich',
  'benchRoom.fit.noise': 'Rauschen eines Messwerts',
  'benchRoom.fit.learn': 'lernen',
  'benchRoom.fit.pitchSigma': 'Winkel eingestellt auf',
  'benchRoom.fit.shared': 'Was alle Läufe gemeinsam haben',
  'benchRoom.fit.sharedHelp':
    'Standardunsicherheiten von Kraftmesser, Hebel, Drehzahlmesser und Nullpunkt der Winkelskala. Mehr Messwerte machen sie nicht kleiner. Zwischen zwei Stufen der Aufbauleiter zählen sie einmal, nicht zweimal. Die Anfangswerte sind übliche Praxis.',
  'benchRoom.fit.gainPercent': 'Angezeigte Kraft',
  'benchRoom.fit.leverPercent': 'Hebel oder Gestänge',
  'benchRoom.fit.speedPercent': 'Angezeigte Drehzahl',
  'benchRoom.fit.pitchZeroDeg': 'Nullpunkt des Winkels',
  'benchRoom.fit.noFreedom':
    'Es gibt nicht mehr Messwerte als Zahlen: Nichts bleibt, um die Anpassung zu beurteilen.',
  'benchRoom.fit.learnt':
    'Der Rest sieht aus wie ein Rauschen von {noise} neben dem Anzeigeschritt. Das wurde aus denselben Messwerten gelernt, sie können das Modell also nicht beurteilen: Dafür das Rauschen des Kraftmessers angeben. (Chi-Quadrat {chi} bei {freedom} Freiheitsgraden.)',
  'benchRoom.fit.noisy':
    'Das sind {share} % des höchsten Messwerts, viel mehr, als ein guter Prüfstand übrig lässt. Nach Zeilen in falscher Folge suchen, nach vertauschtem Drücken und Ziehen oder Vorzeichen, oder nach einer falschen Einheit.',
  'benchRoom.fit.stepAlone':
    'Anzeigeschritt und Winkeleinstellung allein erklären den Rest. (Chi-Quadrat {chi} bei {freedom} Freiheitsgraden.)',
  'benchRoom.fit.good':
    'Die Anpassung ist gut: Gute Prüfstände lassen in {p} % der Fälle mehr übrig, und nichts spricht gegen das Modell. (Chi-Quadrat {chi} bei {freedom} Freiheitsgraden.)',
  'benchRoom.fit.poor':
    'Die Anpassung ist schlecht: Gute Prüfstände lassen nur in {p} % der Fälle mehr übrig. In den Messwerten steckt etwas, das nicht im Modell ist. (Chi-Quadrat {chi} bei {freedom} Freiheitsgraden.)',
  'benchRoom.fit.apart': 'Diese Messwerte trennen alle angepassten Zahlen.',
  'benchRoom.fit.entangled':
    'Diese Messwerte trennen {first} und {second} kaum (Korrelation {correlation}): Jede allein ist unsicher, zusammen sind sie besser bekannt.',
  'benchRoom.fit.blind':
    'Diese Messwerte trennen folgende Zahlen gar nicht: {names}. Andere Einstellwinkel, beide Bewegungsrichtungen oder eine andere Drehzahl würden es.',
  'benchRoom.fit.runs': 'Läufe, die zählen ({count} von {all})',
  'benchRoom.fit.otherHead': 'gemessen an „{name}“',
  'benchRoom.fit.goneHead': 'gemessen an einem Versuch, den es nicht mehr gibt',
  'benchRoom.fit.coarse':
    'Alle Messwerte liegen innerhalb von {steps} Anzeigeschritten: Der Schritt ist zu grob, um diesen Unsicherheiten zu trauen.',
  'benchRoom.fit.negative':
    'Die Reibung ergibt sich unter null: Drücken und Ziehen sind vielleicht vertauscht.',
  'benchRoom.fitFault.noReadings': 'Es gibt keine Messwerte zum Auswerten.',
  'benchRoom.fitFault.badReading':
    'Ein Messwert hat zu einem Moment keine Kraft: Er liegt über dem Totpunkt oder außer Reichweite.',
  'benchRoom.key.spread': 'J_yy − J_zz',
  'benchRoom.key.product': 'J_yz',
  'benchRoom.key.friction': 'Reibung',
  'benchRoom.key.zero': 'Nullpunkt von Lauf {number}',
  'benchRoom.key.extra': 'Luft, mal dem Modell',
  'benchRoom.key.drag': 'Reibung im Stand, Zeile {number}',
  'benchRoom.key.shared': 'Fehler aller Läufe, {number}',
  'benchRoom.runFault.unreadable': '{name}: Die Spalten sind nicht lesbar.',
  'benchRoom.runFault.noRung':
    '{name}: „{fitted}“ ist keine Stufe der Aufbauleiter dieses Kopfes. Unter Messwerte eine wählen.',
  'benchRoom.runFault.noArm': '{name}: Es fehlt, wie lang der Hebel des Kraftmessers ist.',
  'benchRoom.runFault.head': '{name}: Der Kopf hat keine Steuerstange oder steht still.',
  'benchRoom.assumedRung': '{name}: sagt nicht, was montiert war; gilt als der Kopf wie entworfen.',
  'benchRoom.leftOut.setAside': '{name}: beiseitegelegte Messwerte: {count}.',
  'benchRoom.apart.uncounted': '{name}: zählt nicht; unter „Läufe, die zählen“ ist er abgewählt.',
  'benchRoom.apart.otherHead':
    '{name}: wurde an „{head}“ gemessen, nicht am Kopf auf der Bühne; er zählt hier nicht.',
  'benchRoom.apart.goneHead':
    '{name}: wurde an einem Versuch gemessen, den es nicht mehr gibt; er zählt hier nicht.',
  'benchRoom.leftOut.noPlace': '{name}: Messwerte ohne Winkel und ohne Skala: {count}.',
  'benchRoom.leftOut.noCalibration':
    '{name}: Skalenablesungen, die keine Kalibrierung erreicht: {count}. Unter Messwerte, Skala zu Winkel, Paare angeben.',
  'benchRoom.leftOut.noSpeed': '{name}: Messwerte ohne Angabe der Drehzahl: {count}.',
  'benchRoom.leftOut.noLever':
    '{name}: Messwerte über dem Totpunkt oder außer Reichweite: {count}.',
  'benchRoom.unsaid':
    '{name}: Messwerte ohne Angabe von Drücken oder Ziehen, gelten als gehalten: {count}.',
  'benchRoom.beyond': '{name}: Messwerte außerhalb der Kalibrierung: {count}.',
  'benchRoom.flag.farFromOthers':
    '{excess} Standardunsicherheiten neben dem, was die anderen sagen ({limit} sind erlaubt)',
  'benchRoom.flag.overRange': 'an oder über der Grenze des Messbereichs von {limit}',
  'benchRoom.flag.unlikeRepeats': '{by} neben seinen Wiederholungen ({allowed} sind erlaubt)',
  'benchRoom.flag.title': 'Bezweifelt oder beiseitegelegt',
  'benchRoom.flag.more': 'und {count} weitere: siehe die Diagramme.',
  'benchRoom.setAside': 'Beiseitelegen',
  'benchRoom.countAgain': 'Wieder zählen',
  'benchRoom.fit.noAir':
    'Der Entwurf rechnet die Luft nicht mit: Es gibt keinen Luftanteil anzupassen.',
  'benchRoom.split': 'Drücken und Ziehen, Winkel für Winkel',
  'benchRoom.split.none':
    'Bei keinem Einstellwinkel wurde drückend und ziehend gemessen: Moment und Reibung lassen sich nicht von Hand trennen.',
  'benchRoom.split.pitch': 'Winkel',
  'benchRoom.split.speed': 'Drehzahl',
  'benchRoom.split.moment': 'Mittel: Moment',
  'benchRoom.split.friction': 'Reibung außer der im Stand',
  'benchRoom.split.hysteresis': 'Ziehen weniger Drücken',
  'benchRoom.split.grip': 'Moment des Blatthalters',
  'benchRoom.split.reversed': '(vertauscht?)',
  'benchRoom.split.loop': 'Bei {rpm} 1/min verliert eine Schleife aus Drücken und Ziehen {work}.',
  'benchRoom.split.unpaired':
    'Messwerte ohne Gegenstück in der anderen Bewegungsrichtung: {count}.',
  'benchRoom.plot.force': 'Kraft über dem Einstellwinkel',
  'benchRoom.plot.speed': 'Drehzahl der Diagramme von Kraft und Reibung',
  'benchRoom.plot.forceSummary':
    '{count} Messwerte bei {rpm} 1/min über der vorhergesagten und der angepassten Kurve; {aside} des Laufs sind beiseitegelegt. Der angepasste Nullpunkt des Kraftmessers ist abgezogen.',
  'benchRoom.plot.pitch': 'Einstellwinkel, °',
  'benchRoom.plot.forceAxis': 'Kraft am Kraftmesser, {unit}',
  'benchRoom.plot.model': 'Modell',
  'benchRoom.plot.fit': 'angepasst',
  'benchRoom.plot.measured': 'gemessen',
  'benchRoom.plot.left': 'Rest',
  'benchRoom.plot.leftAxis': 'Standardunsicherheiten über der Anpassung',
  'benchRoom.plot.leftSummary':
    '{count} Messwerte; der größte, der zählt, liegt {largest} Standardunsicherheiten daneben.',
  'benchRoom.plot.leftKey': 'Gute Messwerte liegen in neunzehn von zwanzig Fällen im Band.',
  'benchRoom.plot.friction': 'Reibung: halbes Ziehen weniger Drücken',
  'benchRoom.plot.frictionAxis': 'Reibung am Kraftmesser, {unit}',
  'benchRoom.plot.frictionSummary':
    '{count} Einstellwinkel, in beiden Richtungen gemessen, über der modellierten und der angepassten Reibung samt der im Stand.',
  'benchRoom.plot.frictionKey':
    'Halbe Breite der Schleife zwischen Ziehen und Drücken, mit ihrem 95-%-Bereich; die Reibung im Stand ist darin.',
  'benchRoom.plot.frictionPoint': 'Reibung bei {pitch}: {said}.',
  'benchRoom.plot.point': '{name}, Messwert {number}: {force} bei {pitch}, {travel}, {rpm} 1/min.',
  'benchRoom.plot.withoutZero': '{read} ({less} ohne den Nullpunkt des Kraftmessers)',
  'benchRoom.plot.over': '{many} Standardunsicherheiten über der Anpassung.',
  'benchRoom.plot.under': '{many} Standardunsicherheiten unter der Anpassung.',
  'benchRoom.plot.doubted': 'Bezweifelt: {why}.',
  'benchRoom.plot.aside': 'Beiseitegelegt.',
  'benchRoom.plot.beyond': 'Er liegt außerhalb des Diagramms.',
  'benchRoom.plot.reader': 'Messwerte des Diagramms {title}',
  'benchRoom.plot.readerStart':
    'Auf einen Messwert zeigen oder sie mit den Pfeiltasten durchgehen.',
  'benchRoom.plot.keyDoubted': 'bezweifelt',
  'benchRoom.plot.keyAside': 'beiseitegelegt',
  'benchRoom.plot.band.friction': 'Reibung des Modells',
  'benchRoom.plot.band.fit': '95 % der Anpassung',
  'benchRoom.ladder': 'Was jede Stufe zu J_yy − J_zz beiträgt',
  'benchRoom.ladderKey':
    'Ausgefüllt: gemessen, mit 95-%-Bereich. Gestrichelt: modelliert, in Klammern, {unit}. Nach rechts zieht zur Mitte, nach links läuft weg.',
  'benchRoom.ladder.agrees': '{name}: {measured}, modelliert {model}. Sie stimmen überein.',
  'benchRoom.ladder.differs':
    '{name}: {measured}, modelliert {model}. Sie unterscheiden sich um mehr als ihre Unsicherheit (95 %).',
  'benchRoom.correct': 'Berichtigen',
  'benchRoom.correct.none':
    'Noch ist nichts gemessen, was J_yy − J_zz und J_yz beide bestimmt. Unter Messwerte einige Einstellwinkel ablesen.',
  'benchRoom.correct.spread': 'Das Modell hat {amount} J_yy − J_zz zu {way}.',
  'benchRoom.correct.product': 'Von J_yz hat es {amount} zu {way}.',
  'benchRoom.correct.spreadAgrees': 'J_yy − J_zz stimmt bis auf {half}.',
  'benchRoom.correct.productAgrees': 'J_yz stimmt bis auf {half}.',
  'benchRoom.correct.points':
    '{rung}: weicht um mehr als die Unsicherheit vom Modell ab. Neu daran: {parts}.',
  'benchRoom.correct.little': 'wenig',
  'benchRoom.correct.much': 'viel',
  'benchRoom.correct.from': 'Aus {count} Messwerten, {rung}; 95 % nach beiden Seiten.',
  'benchRoom.correct.agrees':
    'Modell und Messwerte stimmen überein: Vielleicht gibt es nichts zu berichtigen.',
  'benchRoom.correct.differs':
    'Modell und Messwerte unterscheiden sich um mehr als ihre Unsicherheit (95 %).',
  'benchRoom.correct.notWhole':
    'Das ist auf einer Stufe der Aufbauleiter gemessen ({rung}). Zum Berichtigen den Kopf wie entworfen messen.',
  'benchRoom.correct.model': 'Was am Modell falsch sein kann',
  'benchRoom.correct.mass':
    '{part} allein erklärt es mit {grams}, {percent} % gegen das Modell. Zur Sicherheit wiegen.',
  'benchRoom.correct.massName': '{part} mit {grams} g',
  'benchRoom.correct.noMass':
    'Keine Masse eines Teils allein erklärt beide Zahlen mit einem vernünftigen Gewicht.',
  'benchRoom.correct.nothing':
    'Die Messwerte stimmen innerhalb ihrer Unsicherheit mit dem Modell überein: Daran gibt es nichts zu berichtigen.',
  'benchRoom.correct.refused': 'Nicht angeboten, mit Grund ({count})',
  'benchRoom.correct.absurdMass':
    '{part} müsste {grams} g wiegen. Über {limit} g ist es nicht die Masse, die falsch ist.',
  'benchRoom.correct.weighed':
    '{part} müsste {grams} g wiegen, wurde aber auf {step} g gewogen: Etwas anderes ist falsch.',
  'benchRoom.correct.absurdLump':
    'Ein Gewicht hier müsste {grams} g haben, mehr als ein Viertel von allem, was mit dem Blatthalter dreht ({limit} g): weiter hinaussetzen.',
  'benchRoom.correct.tooFar':
    '{what} müsste {value} mm sein, mehr als {reach} mm neben dem jetzigen Wert: keine vernünftige Länge.',
  'benchRoom.correct.lumpName': 'Berichtigung vom Prüfstand',
  'benchRoom.correct.addedName': 'Gewicht bis neutral',
  'benchRoom.correct.lengthName': '{what} {value}',
  'benchRoom.correct.noLength':
    'Keine gedrehte Länge bringt ihn innerhalb der Grenzen auf neutral.',
  'benchRoom.correct.try': 'Als Versuch anlegen',
  'benchRoom.correct.lump':
    'Ein Massenpunkt von {grams} bei y = {y}, z = {z} {unit} steht für alles, was fehlt.',
  'benchRoom.correct.turn': 'Was den gemessenen Kopf auf neutral bringt',
  'benchRoom.correct.modelFirst':
    'Zuerst oben das Modell berichtigen: Erst dann lässt sich sagen, was der Kraftmesser am geänderten Kopf zeigen soll.',
  'benchRoom.correct.length':
    '{what}: {value} statt {from} (gefertigt mit {made}). J_yz ist dann {left}.',
  'benchRoom.correct.added': 'Oder {grams} mehr bei y = {y}, z = {z} {unit}.',
  'benchRoom.correct.place': 'Wo der Massenpunkt und das zusätzliche Gewicht sitzen',
  'benchRoom.correct.station': 'Abstand ab Welle',
  'benchRoom.correct.radius': 'Abstand von der Verstellachse',
  'benchRoom.correct.made.model':
    '„{name}“ ist auf der Bühne, mit den bisherigen Messwerten; was dort war, ist als Versuch aufgehoben.',
  'benchRoom.correct.made.head':
    '„{name}“ ist auf der Bühne. Das ist ein anderer Kopf: Die bisherigen Messwerte bleiben bei dem Versuch, der dort war. Das Teil fertigen und den Bestätigungslauf machen.',
  'benchRoom.correct.notMeasured':
    'Der Kopf auf der Bühne ist nicht gemessen: Die bisherigen Messwerte gehören zu „{name}“. Seinen Bestätigungslauf machen.',
  'benchRoom.correct.anotherHead': 'ein anderer Kopf',
  'benchRoom.correct.confirm': 'Der Bestätigungslauf des Kopfes auf der Bühne',
  'benchRoom.correct.confirmMake':
    'Das geänderte Teil fertigen oder wiegen und montieren. Eine neue Sicherungsmutter verwenden und keinen verbogenen Bolzen.',
  'benchRoom.correct.confirmRun':
    'Sicherheitsblatt und Messblatt drucken. Schutzwand, Augenschutz, niemand in der Drehebene; langsam beginnen.',
  'benchRoom.correct.confirmRead':
    'Den Lauf unter Messwerte einlesen und wieder unter Anpassung nachsehen.',
  'benchRoom.correct.confirmHelp':
    'Was der Kraftmesser am Kopf zeigen soll, wie er jetzt auf der Bühne ist:',
  'benchRoom.correct.print': 'Seine Blätter drucken…',
  'benchRoom.correct.toReadings': 'Zu den Messwerten',
  'benchRoom.correct.note': 'Vom Prüfstand',
  'benchRoom.practice': 'Üben',
  'benchRoom.practice.help':
    'Ein gedachter Kraftmesser misst den Kopf auf der Bühne, mit versteckten Fehlern: eine falsche Masse, ein Teil, das anders sitzt, Reibung, ein Nullpunkt, Rauschen. Dieselbe Startzahl gibt dieselben Messwerte. Alles ist erfunden.',
  'benchRoom.practice.seed': 'Startzahl',
  'benchRoom.practice.make': 'Messwerte machen',
  'benchRoom.practice.take': 'Als Läufe nehmen',
  'benchRoom.practice.reveal': 'Verstecktes aufdecken',
  'benchRoom.practice.hide': 'Wieder verstecken',
  'benchRoom.practice.made':
    'Startzahl {seed}: {count} Läufe sind gemacht. Nehmen, anpassen, dann das Versteckte aufdecken.',
  'benchRoom.practice.other': 'Andere Startzahl',
  'benchRoom.practice.truth': 'Was Startzahl {seed} versteckte',
  'benchRoom.practice.run': '{rung}, Übung {seed}',
  'benchRoom.practice.taken':
    '{count} Läufe sind genommen: unter Messwerte und Anpassung nachsehen.',
  'benchRoom.practice.error':
    'Die versteckten Fehler passen nicht zu diesem Kopf; eine andere Startzahl versuchen.',
  'benchRoom.truth.heavier': '{part} ist {percent} % schwerer, als der Entwurf sagt.',
  'benchRoom.truth.lighter': '{part} ist {percent} % leichter, als der Entwurf sagt.',
  'benchRoom.truth.seat': '{part} sitzt längs des Sitzes {shift} mm neben der gezeichneten Stelle.',
  'benchRoom.truth.friction':
    'Die Reibung der Lager ist das {friction}-Fache des Entwurfs, die Reibung im Stand das {drag}-Fache.',
  'benchRoom.truth.gauge':
    'Der Nullpunkt des Kraftmessers ist {zero}, sein Rauschen {noise}; der Winkel wurde auf {pitch}° genau eingestellt.',
  'benchRoom.truth.shared':
    'In allen Läufen gleich: angezeigte Kraft um {gain} % falsch, Hebel um {lever} % gegen die Zeichnung, Drehzahlmesser um {speed} %, Nullpunkt des Winkels um {pitch}°.',
  'benchRoom.truth.head': 'Der wahre Kopf hat {spread} für J_yy − J_zz und {product} für J_yz.',
  'benchRoom.truth.found':
    'Die Läufe, die zählen, sagen {spread} für J_yy − J_zz und {product} für J_yz (95 %).',
  'benchRoom.returns.tooFew':
    'Zu wenige Messwerte um die Flachstellung, um zu sagen, ob jenseits eines Winkels wieder Kraft kommt.',
  'benchRoom.returns.unexplained':
    'Selbst innerhalb von {inner} erklären Masse und Reibung die Messwerte nicht: Reibung im Stand, Rauschen oder Kalibrierung sind vielleicht anders als angegeben.',
  'benchRoom.returns.none':
    'Masse und Reibung erklären alle Messwerte bis {upTo}: Keine Kraft kommt wieder.',
  'benchRoom.returns.returns':
    'Masse und Reibung erklären die Messwerte innerhalb von {inner}. Jenseits, ab {from}, ist mehr da, als Masse bewirkt{way}.',
  'benchRoom.returns.restoring': ', und es treibt den Winkel zurück',
  'benchRoom.returns.aerodynamic':
    'Es geht mit dem Quadrat der Drehzahl und hat nicht die Form von Masse: Es sieht nach Luftkraft aus.',
  'benchRoom.returns.notWithSpeedSquared':
    'Es geht nicht mit dem Quadrat der Drehzahl: Es sieht nicht nach Luftkraft aus, eher nach einer Feder, einem Anschlag oder Reibung.',
  'benchRoom.returns.cannotTell':
    'Ob es Luftkraft ist, lässt sich nicht sagen: Dazu braucht es dieselben Winkel bei zwei Drehzahlen.',
  'benchRoom.returns.and': '{low} und {high}',
} satisfies Readonly<Record<keyof typeof EN, string>>;
