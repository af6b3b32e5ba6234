/** What sets a limit in the rules of part types, by the English; in the nominative, for "größer sein als ...". */
const LIMITS = {
  'phrase.half the height': 'die halbe Höhe',
  'phrase.nine tenths of what the bore leaves': 'neun Zehntel dessen, was die Bohrung lässt',
  'phrase.what a dome within the rim reaches': 'was eine Wölbung innerhalb des Rands erreicht',
  'phrase.eight hundredths of the width': 'acht Hundertstel der Weite',
  'phrase.the airfoil': 'der Profilteil',
  'phrase.the core': 'der Kern',
  'phrase.the length above the point': 'die Länge über der Kuppe',
  'phrase.the room at its place': 'der Platz an seinem Ort',
  'phrase.the height of the head': 'die Höhe des Kopfes',
  'phrase.the extension': 'die Verlängerung',
  'phrase.the thread': 'das Gewinde',
  'phrase.the head': 'der Kopf',
  'phrase.half the bolt hole': 'das halbe Bolzenloch',
  'phrase.four tenths of the thread diameter': 'vier Zehntel des Gewindedurchmessers',
  'phrase.the length without thread': 'die Länge ohne Gewinde',
  'phrase.the thinnest, unless 0 for none': 'der dünnste, sonst 0 für keinen',
  'phrase.the height of body and collar': 'die Höhe von Körper und Bund',
  'phrase.the mean thread diameter': 'der Durchmesser des Gewindes im mittleren Querschnitt',
  'phrase.nineteen twentieths of the width of the root block':
    'neunzehn Zwanzigstel der Breite des Wurzelblocks',
  'phrase.what the thread length leaves': 'was die Gewindelänge lässt',
  'phrase.twice the length of the root block': 'die doppelte Länge des Wurzelblocks',
  'phrase.nineteen twentieths of its diameter': 'neunzehn Zwanzigstel des Durchmessers',
  'phrase.what its place and the thickness leave room for':
    'wofür Ort und Dicke der Wölbung Platz lassen',
  'phrase.the length of the airfoil': 'die Länge des Profilteils',
  'phrase.what the width of the head leaves': 'was die Breite des Kopfes lässt',
  'phrase.the mean bore of the thread': 'die Bohrung des Gewindes im mittleren Querschnitt',
  'phrase.what the length of the thread leaves': 'was die Länge des Gewindes lässt',
  'phrase.the begin of the airfoil and half the weight':
    'der Anfang des Profilteils und das halbe Gewicht',
  'phrase.the tip less half the weight': 'die Spitze weniger das halbe Gewicht',
  'phrase.half the thickness of the thinner end': 'die halbe Dicke des dünneren Endes',
  'phrase.the body, less a thin wall': 'der Körper, weniger eine dünne Wand',
  'phrase.the collar, less a thin wall': 'der Bund, weniger eine dünne Wand',
  'phrase.{around}, less a thin wall round the corners':
    '{around}, weniger eine dünne Wand um die Ecken',
  'phrase.the back edge of the core': 'der hintere Rand des Kerns',
  'phrase.the back edge of the airfoil': 'der hintere Rand des Profilteils',
  'phrase.the front edge of the core': 'der vordere Rand des Kerns',
  'phrase.the front edge of the airfoil': 'der vordere Rand des Profilteils',
  'phrase.the room beside the {name}': 'der Platz neben: {name}',
  'phrase.spar': 'Holm',
  'phrase.second spar': 'zweiter Holm',
  'phrase.tip weight': 'Randgewicht',
  'phrase.second weight': 'zweites Gewicht',
  'phrase.the bottom of the slot and half the bolt hole':
    'der Grund des Schlitzes und das halbe Bolzenloch',
  'phrase.half the arm thickness and half the ball':
    'die halbe Dicke des Hebels und die halbe Kugel',
  'phrase.the free length of the arm': 'die freie Länge des Hebels',
  'phrase.twice the free length of the arm': 'die doppelte freie Länge des Hebels',
  'phrase.has a side that turns back along the chord, on which no even skin can be laid':
    'hat eine Seite, die längs der Sehne zurückläuft; darauf lässt sich keine gleichmäßige Haut legen',
  'phrase.no body of positive volume has such second moments':
    'kein Körper mit positivem Volumen hat solche zweiten Momente',
  'phrase.has {a} numbers, which do not go in pairs':
    'hat {a} Zahlen, die sich nicht zu Paaren ordnen',
  'phrase.has {a} in place of a number (number {b})': 'hat an der Stelle {b} {a} statt einer Zahl',
  'phrase.has {a} points, where {b} are the fewest': 'hat {a} Punkte; mindestens {b} sind nötig',
  'phrase.runs the wrong way round, along the bottom first':
    'läuft falsch herum, zuerst längs der Unterseite',
  'phrase.is only {a} % of its chord thick, less than {b} %':
    'ist nur {a} % der Profilsehne dick, weniger als {b} %',
  'phrase.it {a}': 'es {a}',
  'phrase.is longer than {a} letters': 'ist länger als {a} Zeichen',
  'phrase.is not base64 text': 'ist kein base64-Text',
  'phrase.is not a packed picture of a mesh': 'ist kein gepacktes Bild eines Netzes',
  'phrase.has {a} triangles': 'hat {a} Dreiecke',
  'phrase.has {a} bytes where {b} are needed': 'hat {a} Bytes, wo {b} nötig sind',
  'phrase.has a point that is not a number': 'hat einen Punkt, der keine Zahl ist',
  'phrase.names point {a} of {b}': 'nennt Punkt {a} von {b}',
  'phrase.it has {a} numbers, not {b}': 'es sind {a} Zahlen statt {b}',
  'phrase.its number {a} is {b}': 'die Zahl an Stelle {a} ist {b}',
  'phrase.its volume is {a}, not above zero': 'das Volumen ist {a}, nicht größer als null',
  'phrase.it has {a} triangles of {b}': 'es hat {a} Dreiecke von {b}',
  'phrase.it encloses {a} where the volume is {b}': 'es umschließt {a}, das Volumen ist aber {b}',
  'phrase.its centre is off by {a}': 'der Schwerpunkt liegt um {a} daneben',
} as const;

/** What is wrong with a field of a file, by code; `{name}` stands for a member of the reason. */
const FAULTS = {
  'fault.empty': 'ist leer',
  'fault.tooLong': 'hat {length} Zeichen; gelesen werden höchstens {limit}',
  'fault.truncated': 'endet zu früh, in Zeile {line}, Spalte {column}: Die Datei ist abgeschnitten',
  'fault.notJson': 'ist kein JSON: unerwartet {found} in Zeile {line}, Spalte {column}',
  'fault.repeatedKey': '{key} ist zweimal angegeben, noch einmal in Zeile {line}',
  'fault.tooDeep': 'ist tiefer als {limit} Stufen verschachtelt',
  'fault.wrongFormat': 'muss {expected} sein; gefunden {found}: Das ist keine Entwurfsdatei',
  'fault.badVersion': 'muss eine ganze Zahl ab 0 sein; gefunden {found}',
  'fault.newerVersion':
    'ist {found}, von einem neueren Programm; dieses liest bis {known}. Mit jenem Programm öffnen oder dieses erneuern',
  'fault.olderVersion':
    'ist {found}, das dieses Programm nicht mehr liest; die jetzige Version ist {known}',
  'fault.migrationFailed':
    'eine Datei der Version {from} ließ sich nicht auf den neuen Stand bringen: {detail}',
  'fault.missing': 'fehlt',
  'fault.unknownKey': 'hat einen unbekannten Schlüssel {key}',
  'fault.unknownKind': 'ist eine unbekannte Art {kind}; bekannt sind {known}',
  'fault.wrongType': 'muss {expected} sein; gefunden {found}',
  'fault.notFinite': 'muss eine endliche Zahl sein',
  'fault.notWhole': 'muss eine ganze Zahl sein; gefunden {value}',
  'fault.tooSmall': 'muss mindestens {limit}{unit} sein; gefunden {value}{unit}',
  'fault.tooLarge': 'darf höchstens {limit}{unit} sein; gefunden {value}{unit}',
  'fault.wrongCount': 'muss {expected} Zahlen enthalten; gefunden {count}',
  'fault.textTooLong': 'hat {length} Zeichen; erlaubt sind höchstens {limit}',
  'fault.emptyText': 'darf nicht leer sein',
  'fault.notAChoice': 'muss eines von {options} sein; gefunden {found}',
  'fault.tooMany': 'enthält {count} Einträge; erlaubt sind höchstens {limit}',
  'fault.notInCatalogue': 'steht nicht im Katalog; dort gibt es {known}',
  'fault.unknownMaterial':
    'nennt den Werkstoff {material}, der weder in den Tabellen noch im Entwurf steht',
  'fault.unsound': 'ist nicht zu gebrauchen: {detail}',
  'fault.measuredImpossible': 'kann nicht stimmen: {detail}',
  'fault.repeatedAxis': 'ist eine zweite Zeitmessung um die Achse {axis}',
  'fault.tooManyParts': 'enthält {count} Teile; erlaubt sind höchstens {limit}',
  'fault.repeatedId': 'wiederholt die Kennung {id} von parts[{first}]',
  'fault.repeatedMaterial': 'wiederholt die Kennung {id} von materials[{first}]',
  'fault.repeatedTryOut': 'wiederholt die Kennung {id} von tryOuts[{first}]',
  'fault.shownTryOuts':
    'muss genau einen Eintrag ohne Teile haben, den auf der Bühne; {count} haben keine',
  'fault.adoptedTwice': 'ist ein zweiter übernommener, nach tryOuts[{first}]',
  'fault.tooManyTryOutParts':
    'enthalten zusammen mit denen auf der Bühne {count} Teile; erlaubt sind höchstens {limit}',
  'fault.poseOrSocket': 'muss genau eines von pose und socket haben; gefunden {found}',
  'fault.missingParent': 'nennt ein Teil, das nicht im Entwurf ist: {parent}',
  'fault.unknownSocket': 'das Teil {parent} hat keinen Sitz {socket}; es hat {known}',
  'fault.misfit':
    'ein Teil der Art {kind} passt nicht auf den Sitz {socket}: Er nimmt {socketMates}, das Teil passt auf {partMates}',
  'fault.cycle': 'Teile sitzen im Kreis aufeinander: {ids}',
  'fault.offsetOutOfRange':
    'muss längs des Sitzes zwischen {low} und {high} mm liegen; gefunden {value} mm',
  'fault.rule': 'muss {rule} {against} sein ({limit}{unit}); gefunden {value}{unit}',
  'phrase.below': 'kleiner als',
  'phrase.above': 'größer als',
  'phrase.at most': 'höchstens so groß wie',
  'phrase.at least': 'mindestens so groß wie',
  'phrase.a number': 'eine Zahl',
  'phrase.a list': 'eine Liste',
  'phrase.an object': 'ein Objekt',
  'phrase.nothing': 'nichts',
  'phrase.none': 'keine',
  'phrase.is missing: this size comes in lengths': 'fehlt: Diese Größe gibt es in Längen',
  'phrase.must be left out: this size has no length':
    'muss wegbleiben: Diese Größe hat keine Länge',
  'phrase.a step ends after it begins': 'ein Schritt endet, nachdem er begonnen hat',
  'phrase.a run has a table or rows typed by hand, never both':
    'ein Lauf hat eine Tabelle oder von Hand getippte Zeilen, nie beides',
  'phrase.tolerance.own[{first}] gives the same number a tolerance already':
    'tolerance.own[{first}] gibt derselben Zahl schon eine Toleranz',
  'phrase.does not lie above the row before it ({before} mm): rows go upward':
    'liegt nicht über der Zeile davor ({before} mm): Die Zeilen gehen aufwärts',
  'phrase.exactly one answer must be true of the head; {count} are':
    'genau eine Antwort muss für den Kopf stimmen; es sind {count}',
  'phrase.the head has no such number': 'der Kopf hat keine solche Zahl',
  'phrase.it is met before anything was done': 'es ist erfüllt, bevor etwas getan wurde',
  'phrase.a lesson file says stillgrip-lesson here': 'in einer Lektion steht hier stillgrip-lesson',
  'phrase.wants atLeast, atMost or both': 'braucht atLeast, atMost oder beides',
  'phrase.the part has no number {field}': 'das Teil hat keine Zahl {field}',
  'phrase.the design has no number {field}': 'der Entwurf hat keine Zahl {field}',
  'phrase.there is no {field} there': 'dort gibt es kein {field}',
  'phrase.wants at least {least} entries, has {count}':
    'braucht mindestens {least} Einträge, hat {count}',
  'phrase.{mark} is no quantity: a number and mm, g, N, N mm, g mm2 or rpm':
    '{mark} ist keine Größe: eine Zahl und mm, g, N, N mm, g mm2 oder rpm',
} as const;

/** Rules of part types, faults of files, by code or by the English phrase. */
export const RULE_TEXTS: Readonly<Record<string, string>> = { ...LIMITS, ...FAULTS };
