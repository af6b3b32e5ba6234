/**
 * What readers of mesh and section files say of a file, by the English; each completes "Die Datei lässt sich nicht lesen: Sie
 * ..." (`import.fault.malformed`). A place holds a number, a text of the file, or a phrase of its own.
 */
export const READER_TEXTS: Readonly<Record<string, string>> = {
  'phrase.has more than {a} characters': 'hat mehr als {a} Zeichen',
  'phrase.has no coordinates': 'hat keine Koordinaten',
  'phrase.is not plain text': 'ist kein reiner Text',
  'phrase.has "{a}" where a pair of numbers should be':
    'hat „{a}“, wo ein Zahlenpaar stehen müsste',
  'phrase.has a number beyond {a}': 'hat eine Zahl jenseits von {a}',
  'phrase.has more than {a} points': 'hat mehr als {a} Punkte',
  'phrase.announces {a} and {b} points but has {c}': 'kündigt {a} und {b} Punkte an, hat aber {c}',
  'phrase.has all its points at one place of the chord':
    'hat alle Punkte an derselben Stelle der Profilsehne',
  'phrase.lies more than two chords off its chord line':
    'liegt mehr als zwei Profilsehnen neben ihrer Sehnenlinie',
  'phrase.line {a}': 'Zeile {a}',
  'phrase.triangle {a}': 'Dreieck {a}',
  'phrase.point {a}': 'Punkt {a}',
  'phrase.a placed mesh': 'einem gesetzten Netz',
  'phrase.a placed object': 'einem gesetzten Objekt',
  'phrase.a face': 'einer Fläche',
  'phrase.the normal': 'der Normalen',
  'phrase.a coordinate': 'einer Koordinate',
  'phrase.has a coordinate of {a} in {b}, beyond {c}':
    'hat eine Koordinate {a} jenseits von {c}, Ort: {b}',
  'phrase.has a coordinate that is not a number in {a}':
    'hat eine Koordinate, die keine Zahl ist, Ort: {a}',
  'phrase.has a node in two places of its tree': 'hat einen Knoten an zwei Stellen ihres Baums',
  'phrase.places more than {a} triangles with {b} bytes':
    'setzt mit {b} Bytes mehr als {a} Dreiecke',
  'phrase.places more than {a} primitives': 'setzt mehr als {a} Grundkörper',
  'phrase.has a primitive of mode {a}': 'hat einen Grundkörper der Art {a}',
  'phrase.has a primitive without positions': 'hat einen Grundkörper ohne Punkte',
  'phrase.has a triangle that names point {a} of {b}':
    'hat ein Dreieck, das Punkt {a} von {b} nennt',
  'phrase.has a transform of other than {a} numbers':
    'hat eine Abbildung, die nicht aus {a} Zahlen besteht',
  'phrase.has an accessor that is not a {a}': 'hat einen Zugriff, der kein {a} ist',
  'phrase.has the component type {a}': 'hat den Zahlentyp {a}',
  'phrase.claims {a} numbers where there is no room for them':
    'gibt {a} Zahlen an, für die kein Platz ist',
  'phrase.has {a} bytes, less than a GLB header': 'hat {a} Bytes, weniger als ein GLB-Kopf',
  'phrase.claims {a} bytes but has {b}': 'gibt {a} Bytes an, hat aber {b}',
  'phrase.does not begin with a whole JSON chunk': 'beginnt nicht mit einem ganzen JSON-Stück',
  'phrase.has {a} bytes of JSON': 'hat {a} Bytes JSON',
  'phrase.ends inside the head of a chunk': 'endet mitten im Kopf eines Stücks',
  'phrase.has a chunk of {a} bytes that runs past the end':
    'hat ein Stück von {a} Bytes, das über das Ende reicht',
  'phrase.has a JSON chunk that is not JSON': 'hat ein JSON-Stück, das kein JSON ist',
  'phrase.has a JSON chunk that is not an object': 'hat ein JSON-Stück, das kein Objekt ist',
  'phrase.names the {a} {b}, which is not there': 'nennt {a} {b}, was nicht da ist',
  'phrase.has {a} for {b}': 'hat {a} für: {b}',
  'phrase.the mode of a primitive': 'die Art eines Grundkörpers',
  'phrase.a component type': 'einen Zahlentyp',
  'phrase.the length of an accessor': 'die Länge eines Zugriffs',
  'phrase.the start of a buffer view': 'den Anfang eines Pufferausschnitts',
  'phrase.the length of a buffer view': 'die Länge eines Pufferausschnitts',
  'phrase.the start of an accessor': 'den Anfang eines Zugriffs',
  'phrase.a stride': 'eine Schrittweite',
  'phrase.buffer view': 'den Pufferausschnitt',
  'phrase.sparse accessors': 'dünn besetzte Zugriffe',
  'phrase.buffers outside the file': 'Puffer außerhalb der Datei',
  'phrase.version {a}': 'Version {a}',
  'phrase.free-form surfaces (cstype)': 'Freiformflächen (cstype)',
  'phrase.ZIP method {a}': 'ZIP-Verfahren {a}',
  'phrase.has a point of fewer than three coordinates in line {a}':
    'hat in Zeile {a} einen Punkt mit weniger als drei Koordinaten',
  'phrase.has "{a}" for a coordinate in line {b}': 'hat in Zeile {b} „{a}“ als Koordinate',
  'phrase.has a face of fewer than three corners in line {a}':
    'hat in Zeile {a} eine Fläche mit weniger als drei Ecken',
  'phrase.names the point "{a}" of {b} in line {c}': 'nennt in Zeile {c} den Punkt „{a}“ von {b}',
  'phrase.holds no body that the CAD kernel can read':
    'enthält keinen Körper, den der CAD-Kern liest',
  'phrase.comes out of the kernel with a corner that is not there':
    'kommt aus dem CAD-Kern mit einer Ecke, die es nicht gibt',
  'phrase.has {a} bytes, less than the {b} of an STL header':
    'hat {a} Bytes, weniger als die {b} eines STL-Kopfs',
  'phrase.claims {a} triangles but ends after {b}': 'gibt {a} Dreiecke an, endet aber nach {b}',
  'phrase.ends in line {a} before {b}': 'endet in Zeile {a} vor {b}',
  'phrase.has "{a}" where "{b}" should stand, in line {c}':
    'hat in Zeile {c} „{a}“, wo „{b}“ stehen müsste',
  'phrase.comes to {a} points for {b} triangles': 'kommt auf {a} Punkte bei {b} Dreiecken',
  'phrase.is a ZIP package, but not a 3MF one': 'ist ein ZIP-Paket, aber keines nach 3MF',
  'phrase.has broken relationships: {a}': 'hat beschädigte Verweise: {a}',
  'phrase.has relationships with a document type': 'hat Verweise mit einem Dokumenttyp',
  'phrase.does not say where its model is': 'sagt nicht, wo ihr Modell ist',
  'phrase.has more than {a} models': 'hat mehr als {a} Modelle',
  'phrase.lacks a part that it names ({a})': 'nennt einen Teil, der fehlt ({a})',
  'phrase.has a part that is not UTF-8 text ({a})': 'hat einen Teil, der kein UTF-8-Text ist ({a})',
  'phrase.has models in different units ({a} and {b})':
    'hat Modelle in verschiedenen Einheiten ({a} und {b})',
  'phrase.places the object {a}, which is not there': 'setzt das Objekt {a}, das es nicht gibt',
  'phrase.has an object that is a component of itself':
    'hat ein Objekt, das in sich selbst enthalten ist',
  'phrase.has components nested more than {a} deep':
    'hat Bestandteile, die mehr als {a}-fach verschachtelt sind',
  'phrase.has a model that is not XML: {a}': 'hat ein Modell, das kein XML ist: {a}',
  'phrase.has a model with a document type, which 3MF forbids':
    'hat ein Modell mit einem Dokumenttyp, was 3MF verbietet',
  'phrase.has elements nested more than {a} deep':
    'hat Elemente, die mehr als {a}-fach verschachtelt sind',
  'phrase.has an empty model': 'hat ein leeres Modell',
  'phrase.has a model that begins with <{a}> of another kind':
    'hat ein Modell, das mit <{a}> von anderer Art beginnt',
  'phrase.has the unit "{a}"': 'hat die Einheit „{a}“',
  'phrase.has an object without id': 'hat ein Objekt ohne Kennung',
  'phrase.has an object with a repeated id': 'hat ein Objekt mit einer Kennung, die es schon gibt',
  'phrase.has an object {a} id': 'hat ein Objekt, Kennung: {a}',
  'phrase.has a triangle with the corner "{a}"': 'hat ein Dreieck mit der Ecke „{a}“',
  'phrase.places an object without naming it': 'setzt ein Objekt, ohne es zu nennen',
  'phrase.has a transform of other than twelve numbers ("{a}")':
    'hat eine Abbildung, die nicht aus zwölf Zahlen besteht („{a}“)',
  'phrase.has a broken table of contents at entry {a} of {b}':
    'hat ein beschädigtes Inhaltsverzeichnis bei Eintrag {a} von {b}',
  'phrase.ends inside its table of contents': 'endet mitten in ihrem Inhaltsverzeichnis',
  'phrase.has two entries of one name ({a})': 'hat zwei Einträge desselben Namens ({a})',
  'phrase.is a ZIP package without its table of contents, as if cut short':
    'ist ein ZIP-Paket ohne Inhaltsverzeichnis, wie abgeschnitten',
  'phrase.holds a damaged entry ({a})': 'enthält einen beschädigten Eintrag ({a})',
  'phrase.holds an entry that is not where it should be ({a})':
    'enthält einen Eintrag, der nicht ist, wo er sein müsste ({a})',
  'phrase.ends inside an entry ({a})': 'endet mitten in einem Eintrag ({a})',
  'phrase.gives a body that cannot be weighed ({a}): it is too thin for its size or too far from its origin':
    'ergibt einen Körper, der sich nicht wiegen lässt ({a}): Er ist zu dünn für seine Größe oder zu weit von seinem Nullpunkt',
  'phrase.holds bytes that are no text': 'enthält Bytes, die kein Text sind',
  'phrase.ends inside a text, as if cut short': 'endet mitten in einem Text, wie abgeschnitten',
  'phrase.ends inside a comment, as if cut short':
    'endet mitten in einem Kommentar, wie abgeschnitten',
  'phrase.has brackets nested more than {a} deep':
    'hat Klammern, die mehr als {a}-fach verschachtelt sind',
  'phrase.closes a bracket that is not open': 'schließt eine Klammer, die nicht offen ist',
  'phrase.does not come to END-ISO-10303-21, as if cut short':
    'kommt nicht bis END-ISO-10303-21, wie abgeschnitten',
  'phrase.does not begin with the mark ISO-10303-21 alone':
    'beginnt nicht mit der Marke ISO-10303-21 allein',
  'phrase.lacks its header or its data': 'hat keinen Kopf oder keine Daten',
  'phrase.holds entries that lie over one another': 'enthält Einträge, die sich überdecken',
  'phrase.the worker stopped': 'das Rechenprogramm brach ab',
  'phrase.the answer could not be read': 'die Antwort war nicht zu lesen',
};
