import type { BENCH as EN } from '../en/bench';

export const BENCH = {
  'bench.fault.at': 'Zeile {row}, Spalte {column}: {reason}',
  'bench.fault.atRow': 'Zeile {row}: {reason}',
  'bench.fault.atColumn': 'Spalte {column}: {reason}',
  'bench.fault.columnNamed': '{column} ({heading})',
  'bench.fault.empty': 'darin steht nichts.',
  'bench.fault.tooLong': 'der Text hat {length} Zeichen; höchstens {limit} werden gelesen.',
  'bench.fault.notText': 'das ist kein Text.',
  'bench.fault.workbook':
    'das ist eine Arbeitsmappe. Ihr Blatt als CSV sichern oder die Zellen kopieren und einfügen.',
  'bench.fault.cutOff': 'der Text endet mitten in einem Zeichen: Die Datei ist abgeschnitten.',
  'bench.fault.openQuote': 'ein Anführungszeichen wird geöffnet und nie geschlossen.',
  'bench.fault.textAfterQuote': 'nach dem schließenden Anführungszeichen steht {found}.',
  'bench.fault.tooManyRows': 'es sind mehr als {limit} Zeilen.',
  'bench.fault.tooManyColumns': 'es sind {count} Spalten; höchstens {limit} werden gelesen.',
  'bench.fault.cellTooLong': 'die Zelle hat {length} Zeichen; höchstens {limit} werden gelesen.',
  'bench.fault.noTable': 'keine Zeilen mit Zahlen gefunden.',
  'bench.fault.noRows': 'es gibt Überschriften, aber keine Zeilen darunter.',
  'bench.fault.commaIsBoth':
    'es sind {cells} Zellen für {columns} Überschriften: Das Komma scheint sowohl Spalten als auch Dezimalen zu trennen. Mit Strichpunkten ausgeben oder mit Dezimalpunkt.',
  'bench.fault.decimalUnclear':
    '{found} könnte Tausender sein oder drei Dezimalen haben, und keine Zahl der Tabelle verrät es. Angeben, welches.',
  'bench.fault.cancelled': 'das Lesen wurde abgebrochen.',
  'bench.fault.noReadingColumn': 'Keine Spalte ist eine Kraft oder ein Moment.',
  'bench.fault.noPlaceColumn':
    'Keine Spalte ist ein Einstellwinkel, eine Skalenablesung oder eine Zeit.',
  'bench.fault.unitMissing': 'die Einheit ist nicht genannt. Eine wählen.',
  'bench.fault.unitUnknown': 'die Einheit {found} ist nicht bekannt.',
  'bench.fault.unitWrong': '{found} ist keine Einheit für: {role}.',
  'bench.fault.roleTwice':
    'zum zweiten Mal „{role}“, neben Spalte {first}. Eine wählen oder angeben, was sie unterscheidet.',
  'bench.fault.columnGone':
    'Die Tabelle hat {columns} Spalten, und die Wahl galt einer anderen Anzahl.',
  'bench.fault.tooManyCells': 'es sind {cells} Zellen für {columns} Spalten.',
  'bench.fault.noValue': 'es fehlt ein Wert.',
  'bench.fault.notANumber': '{found} ist keine Zahl.',
  'bench.fault.notFinite': '{found} ist keine endliche Zahl.',
  'bench.fault.otherDecimal':
    '{found} passt nicht: Das Dezimalzeichen dieser Spalte ist {decimal}.',
  'bench.fault.ambiguousNumber': '{found} könnte Tausender sein oder drei Dezimalen haben.',
  'bench.fault.overRange': '{found}: Der Kraftmesser war über seinem Messbereich.',
  'bench.fault.badSense': '{found} sagt weder Zug noch Druck.',
  'bench.fault.senseMissing': 'es fehlt, ob es Zug oder Druck ist.',
  'bench.fault.signContradicts': 'das Vorzeichen von {found} widerspricht „{sense}“.',
  'bench.fault.badTravel':
    '{found} ist keine Bewegungsrichtung: Drücken, Ziehen, auf, ab oder gehalten.',
  'bench.fault.badTime': '{found} ist keine Zeit.',
  'bench.fault.twoForces':
    'Zug und Druck sind beide angegeben; der andere Wert steht in Spalte {first}.',
  'bench.fault.outOfRange': '{value} {unit} liegt nicht zwischen {min} und {max} {unit}.',
  'bench.role.pitch': 'Einstellwinkel',
  'bench.role.scale': 'Skalenablesung',
  'bench.role.force': 'Kraft',
  'bench.role.moment': 'Moment',
  'bench.role.sense': 'Zug oder Druck',
  'bench.role.travel': 'Bewegungsrichtung',
  'bench.role.speed': 'Drehzahl',
  'bench.role.time': 'Zeit',
  'bench.role.unit': 'Einheit',
  'bench.role.run': 'Lauf',
  'bench.role.note': 'Notiz',
  'bench.role.ignore': 'nicht verwendet',
  'bench.sense.tension': 'Zug',
  'bench.sense.compression': 'Druck',
} satisfies Readonly<Record<keyof typeof EN, string>>;
