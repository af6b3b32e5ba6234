import type { RACKET as EN } from '../en/racket';

/** Lernen: der Schläger, ein Körper, der geworfen und frei ist. */
export const RACKET = {
  'racket.axis': 'Wurfachse',
  'racket.axis.least': 'längs des Griffs (kleinstes)',
  'racket.axis.middle': 'quer zum Griff (mittleres)',
  'racket.axis.greatest': 'senkrecht zum Rahmen (größtes)',
  'racket.moment.least': 'längs des Griffs: kleinstes',
  'racket.moment.middle': 'quer zum Griff: mittleres',
  'racket.moment.greatest': 'senkrecht zum Rahmen: größtes',
  'racket.beside': 'Fehler',
  'racket.degrees': '{angle}°',
  'racket.throw': 'Werfen',
  'racket.pause': 'Pause',
  'racket.timeLabel': 'Zeit',
  'racket.seconds': '{time} s',
  'racket.time': 'Zeit, s',
  'racket.slowed': '({times}-fach verlangsamt)',
  'racket.still': 'Dieses Gerät wünscht wenig Bewegung: die Zeit selbst verschieben.',
  'racket.said.none': 'Nicht umgeschlagen',
  'racket.said.once': 'Einmal umgeschlagen',
  'racket.said': '{flips}-mal umgeschlagen',
  'racket.picture':
    'Ein Schläger, ein Rahmen am Griff, taumelt in der Luft: Sein Drehimpuls zeigt nach oben und bleibt, seine Drehung wandert.',
  'racket.noWebGl':
    'Dieser Browser kann das 3D-Bild nicht zeichnen (WebGL 2 fehlt oder ist abgeschaltet). Kurve und Zahlen sagen dasselbe.',
  'racket.plot': 'Drehung um die Wurfachse; Kreise: er schlägt um',
  'racket.plot.none':
    'Drehung um die Achse {axis} über der Zeit: Sie behält ihr Vorzeichen, der Schläger schlägt nicht um.',
  'racket.plot.flips':
    'Drehung um die Achse {axis} über der Zeit: Sie wechselt ihr Vorzeichen, der Schläger schlägt um, nach {times} Sekunden.',
  'racket.key.momentum': 'Drehimpuls bleibt',
  'racket.key.spin': 'Drehung wandert',
  'racket.key.trace': 'Drehimpuls, vom Körper aus gesehen',
  'racket.facts': 'Die drei Würfe und das eingespannte Blatt',
  'racket.column.axis': 'Achse',
  'racket.column.moment': 'Moment',
  'racket.column.turns': 'Schlägt um',
  'racket.every': 'alle {time} s',
  'racket.never': 'nie',
  'racket.once': 'er schlägt um',
  'racket.made':
    'Ein erfundener Schläger, 1,5 Umdrehungen je Sekunde, länger betrachtet, als ein Wurf dauert; Zeiten nach der exakten Lösung (elliptische Funktionen). Ein zehnmal genauerer Wurf schlägt später um, nicht nie. Nie nur, wenn die Drehung genau auf der Achse liegt.',
  'racket.free.head': 'Frei.',
  'racket.free':
    'Die Schwerkraft greift im Schwerpunkt an und dreht nichts, und die Luft ist weggelassen: Energie und Drehimpuls bleiben. Um die Achsen des kleinsten und des größten Trägheitsmoments bleibt ein kleiner Fehler klein; um die mittlere wächst er, und der Schläger schlägt um, zurück und wieder um.',
  'racket.gripped.head': 'Eingespannt.',
  'racket.gripped':
    'Ein Blatt in seinem Halter ist nicht frei: Welle und Rotor lassen es mit gleichbleibender Drehzahl um die Welle laufen, was es auch tut, und der Motor zahlt dafür. Lager halten seine Längsachse von der Welle weggerichtet. Eine einzige Bewegung bleibt ihm: die um die Verstellachse.',
  'racket.shared.head': 'Was beide gemeinsam haben.',
  'racket.shared':
    'Ein Glied der Eulerschen Gleichungen: Was einen Körper um seine Längsachse dreht, ist die Differenz der beiden anderen Trägheitsmomente mal den beiden anderen Drehungen, (I_yy − I_zz) ω_y ω_z = (J_zz − J_yy) ω_y ω_z. Beim Schläger, um seine mittlere Achse geworfen, nähren dieses und das entsprechende Glied der dritten Achse einander, und der Fehler wächst; im Blatthalter (ohne Konuswinkel), mit ω_y = W sin t und ω_z = W cos t, bleibt es allein übrig und ist das Moment der Masse, das diese Seite zeigt. Eine runde Streuung lässt es verschwinden.',
  'racket.rests.head': 'Wo er ruht.',
  'racket.rests':
    'Der Blatthalter schlägt also nicht immer wieder um. Er ruht, wo sein Trägheitsmoment um die Welle so groß ist, wie das Verstellen es machen kann: ein Blatt flach in der Drehebene, ein Bolzen allein in sie hineingedreht. Eine Vierteldrehung weiter ist dieses Moment so klein, wie das Verstellen es machen kann, und dort läuft der Blatthalter weg. Für ein Blatt ist das die mittlere der drei Achsen, die, um die der Schläger umschlägt. Die des kleinsten Moments ist die Längsachse selbst: Ein freier Schläger dreht sich gut um sie, ein Blatthalter kann es nie.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
