import type { LET_GO_ROOM as EN } from '../en/letGoRoom';

/** Was nur der Raum des Loslassens sagt; es kommt mit ihm. */
export const LET_GO_ROOM = {
  'letGo.pause': 'Pause',
  'letGo.goOn': 'Weiter',
  'letGo.step': 'Schritt',
  'letGo.stepHelp': 'Ein Vierzigstel einer Schwingung',
  'letGo.toEnd': 'Zum Ende',
  'letGo.toEndHelp': 'Gleich zeigen, wo es endet',
  'letGo.replay': 'Noch einmal',
  'letGo.replayHelp': 'Zurück zum Loslassen, und dasselbe noch einmal',
  'letGo.controls': 'Loslassen',
  'letGo.slowed': 'Verlangsamt',
  'letGo.slowedAuto': 'von selbst',
  'letGo.damping': 'Dämpfung',
  'letGo.dampingHelp':
    'Geschwindigkeitsproportionale Dämpfung, als Anteil an der, die ein dünnes Blatt eben am Schwingen hindert. Die Luft allein dämpft ein Blatt um einige Prozent.',
  'letGo.rebound': 'Rückprall',
  'letGo.reboundHelp':
    'Anteil der Geschwindigkeit, der von einem Anschlag des Schiebers zurückkommt: 0 bis 1.',
  'letGo.sliderMass': 'Schieber',
  'letGo.sliderMassHelp':
    'Masse des Schiebers und dessen, was sich mit ihm bewegt, für den ganzen Kopf.',
  'letGo.noNumber': '{field}: Es fehlt eine Zahl, etwa 3.',
  'letGo.range': '{field} muss zwischen {min} und {max} liegen.',
  'letGo.hills': 'Energie über dem Einstellwinkel, {unit}',
  'letGo.trace': 'Einstellwinkel über der Zeit, {unit}',
  'letGo.energy': 'Energie',
  'letGo.pitchAxis': 'Einstellwinkel, °',
  'letGo.time': 'Zeit, {unit}',
  'letGo.notYet': 'Hier wird gezeichnet, was er nach dem Loslassen tut.',
  'letGo.ball': 'Einstellwinkel des Blatthalters',
  'letGo.ballHelp':
    'Die Kugel ziehen: Gehalten stellt sie den Winkel; losgelassen zieht eine weiche Feder sie dem Zeiger nach. Pfeiltasten tun dasselbe.',
  'letGo.end.stop': 'Anschlag',
  'letGo.end.overCentre': 'über Totpunkt',
  'letGo.end.unreachable': 'Reichweite endet',
  'letGo.end.open': '',
  'letGo.key.rests': 'ruht',
  'letGo.key.flees': 'läuft weg',
  'letGo.key.holds': 'Reibung hält',
  'letGo.key.level': 'seine Energie',
  'letGo.heldStays':
    'Gehalten bei {pitch}. Hier losgelassen bleibt er: Das Moment ist {moment}, Reibung hält bis {friction}.',
  'letGo.heldGoes':
    'Gehalten bei {pitch}. Das Moment von {moment} ist mehr als die {friction}, die Reibung hält: Losgelassen läuft er {way}.',
  'letGo.heldStill': 'Gehalten bei {pitch}. Kein Moment dreht ihn hier.',
  'letGo.heldNoSpin':
    'Gehalten bei {pitch}. Der Rotor steht still: Nichts dreht den Blatthalter, bei welchem Winkel auch immer.',
  'letGo.heldEdge':
    'Gehalten bei {pitch}, einer Kipplage, und nichts reibt: Genau hier losgelassen steht er, und die kleinste Berührung schickt ihn fort.',
  'letGo.heldFlees':
    'Gehalten bei {pitch}: Ein Moment von {moment} treibt ihn {way}, und nichts reibt.',
  'letGo.up': 'nach oben',
  'letGo.down': 'nach unten',
  'letGo.now': '{time} nach dem Loslassen: {pitch}, {rate}.',
  'letGo.moving': 'Losgelassen, gezeigt mit {slowness}.',
  'letGo.last': 'Letztes Mal: {text}',
  'letGo.paused': 'Angehalten. {now}',
  'letGo.stays': 'Er bleibt bei {pitch}: Reibung hält ihn (Moment {moment} von {friction}).',
  'letGo.staysStill': 'Er bleibt bei {pitch}: Nichts dreht ihn dort.',
  'letGo.staysEdge':
    'Er steht bei {pitch}, einer Kipplage, und nichts reibt: Die kleinste Berührung schickt ihn nach der einen oder anderen Seite fort.',
  'letGo.staysOnStop': 'Er bleibt bei {pitch}: Der Anschlag trägt ihn.',
  'letGo.settlesFriction':
    'Er kommt in {time} bei {pitch} zur Ruhe: Dort hält ihn Reibung (Moment {moment} von {friction}).',
  'letGo.settlesDamping': 'Er kommt in {time} bei {pitch} zur Ruhe.',
  'letGo.struck': 'Unterwegs traf er {times} den Anschlag, zuerst mit {rate}.',
  'letGo.once': 'einmal',
  'letGo.often': '{count}-mal',
  'letGo.runsToStop':
    'Er läuft in {reached} zum Anschlag bei {pitch}, trifft ihn mit {rate} und liegt dort ab {time}.',
  'letGo.overCentre':
    'Er läuft in {time} dorthin, wo der Hebel über den Totpunkt geht, {pitch}, und kommt mit {rate} an: Er klemmt oder schwingt hindurch, dorthin, wo die Steuerung verkehrt herum wirkt. Jenseits davon ist nichts berechnet.',
  'letGo.unreachable':
    'Er läuft zum Ende der Stangenreichweite: {pitch} in {time}, mit {rate}. Das letzte halbe Grad, in dem Stange und Schieber sich unbegrenzt schnell bewegen würden, ist nicht berechnet.',
  'letGo.open':
    'Er geht nach {time} durch {pitch}, mit {rate}. Jenseits davon ist nichts berechnet.',
  'letGo.oscillates':
    'Nach {time} schwingt er noch, zwischen {low} und {high}: Zu wenig bremst ihn.',
  'letGo.pushes': 'Anschieben: {force} an der Steuerstange ({moment} um die Achse).',
  'letGo.pushesMoment': 'Anschieben: {moment} um die Achse.',
  'letGo.pushNeed': 'Ohne Reibung hielten ihn hier {need}; Reibung gibt oder nimmt {friction}.',
  'letGo.pushHint':
    'Anschieben: die Kugel ziehen oder, solange er läuft, das Winkelbild. Eine gedrückte Pfeiltaste schiebt mit {moment}, mit Umschalt doppelt, mit Alt mit einem Zehntel davon.',
  'letGo.side': 'Was daraus wird',
  'letGo.books': 'Wo seine Energie ist',
  'letGo.bookFallen': 'herabgekommen um',
  'letGo.bookGiven': 'von Hand gegeben',
  'letGo.bookMotion': 'in Bewegung',
  'letGo.bookFriction': 'von Reibung genommen',
  'letGo.bookDamping': 'von Dämpfung genommen',
  'letGo.bookStops': 'von Anschlägen genommen',
  'letGo.bookBalance':
    'Die ersten zwei ergeben die letzten vier, bis auf {error} der größten Bewegungsenergie.',
  'letGo.assumes':
    'Schätzung. Die Drehzahl bleibt gleich; Teile sind starr und ohne Spiel; Reibung in Bewegung ist die im Stand; die Luft ist wie im stetigen Schwebeflug, und ihre Dämpfung ist die hier gesetzte Zahl; alle Blatthalter bewegen sich gleich.',
  'letGo.caution':
    'Nur auf dieser Seite. Nie einen laufenden Blatthalter von Hand loslassen: Schutzwand, Augenschutz, niemand in der Drehebene.',
  'letGo.fault.noReach':
    'Die Steuerstange reicht in Flachstellung nicht hin: Es gibt nichts loszulassen.',
  'letGo.fault.outsideTravel':
    'Bei {pitch} lässt er sich nicht loslassen: Das Gestänge arbeitet von {low} bis {high}.',
  'letGo.fault.inertia': 'Hier dreht nichts: Es gibt keine Masse loszulassen.',
  'letGo.fault.moment':
    'Bei {pitch} ist kein Moment bekannt, also lässt er sich dort nicht loslassen.',
  'letGo.fault.friction':
    'Bei {pitch} ist die Reibung nicht bekannt, also lässt er sich dort nicht loslassen.',
  'letGo.fault.choice': '{field} liegt außerhalb der Grenzen.',
  'letGo.fault.other':
    'Er lässt sich nicht loslassen: {field} liegt außerhalb der Grenzen ({value}).',
  'letGo.fault.notFetched':
    'Was ihn loslässt, ließ sich nicht laden ({reason}). Noch einmal versuchen.',
  'letGo.summaryHills':
    'Energie des Blatthalters über dem Einstellwinkel, von {low} bis {high}. {landmarks} {held}',
  'letGo.summaryWell': 'Mulde bei {pitch}, {depth} tief.',
  'letGo.summaryWellOnly': 'Mulde bei {pitch}.',
  'letGo.summaryHill': 'Berg bei {pitch}.',
  'letGo.summaryHeld': 'Reibung hält ihn von {from} bis {to}.',
  'letGo.summaryTrace':
    'Er wurde bei {from} losgelassen, lief zwischen {low} und {high} und war nach {time} bei {pitch}.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
