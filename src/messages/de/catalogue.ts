import type { CATALOGUE as EN } from '../en/catalogue';

export const CATALOGUE = {
  'catalogue.title': 'Katalog',
  'catalogue.own': 'Eigene Maße',
  'catalogue.choose': 'Wählen…',
  'catalogue.change': 'Ändern…',
  'catalogue.chooseHelp':
    'Nimmt die Maße aus einer Zeile einer Norm; was danach geändert wird, ist gekennzeichnet.',
  'catalogue.leave': 'Maße behalten, vom Katalog lösen',
  'catalogue.reference': '{standard} {size}',
  'catalogue.referenceLength': '{standard} {size} × {length}',
  'catalogue.asListed': 'Wie in der Norm.',
  'catalogue.left': 'Weicht von der Norm ab:',
  'catalogue.differs': '{field} {value}, Norm {standard}',
  'catalogue.oddLength':
    '{length} ist keine Normlänge von {name}; die nächsten sind {below} und {above}.',
  'catalogue.oddLengthOne': '{length} ist keine Normlänge von {name}; die nächste ist {next}.',
  'catalogue.pick': 'Normteile: {kind}',
  'catalogue.search': 'Suche nach Norm, Art, Größe und Länge',
  'catalogue.searchExample': 'M3 22, ISO 4762 10, 4-40 1/2',
  'catalogue.rows': 'Zeilen der Normen',
  'catalogue.found': 'Gefundene Zeilen: {count}',
  'catalogue.none':
    'Keine Zeile passt dazu. Größen schreibt man M3 oder #4-40, Längen 22, 22 mm oder 1/2 in.',
  'catalogue.notListed': 'nicht verzeichnet',
  'catalogue.length': 'Länge',
  'catalogue.lengths': 'Normlängen',
  'catalogue.lengthEmpty': 'Es fehlt eine Länge.',
  'catalogue.lengthUnread': '„{text}“ ist keine Länge.',
  'catalogue.lengthLimits': 'Die Länge muss zwischen {min} und {max} liegen.',
  'catalogue.mass': 'Masse',
  'catalogue.source': 'Quelle',
  'catalogue.fromMemory': 'aus dem Gedächtnis',
  'catalogue.fromMemoryNote':
    'Eine Zahl dieser Zeile ist erinnert, nicht nachgelesen: vor Gebrauch nachmessen.',
  'catalogue.unfit': 'Diese Zeile passt nicht zum übrigen Teil: {reason}',
  'catalogue.take': '{name} nehmen',
  'catalogue.takeWhy': 'Die Länge ist noch nicht verstanden',
} satisfies Readonly<Record<keyof typeof EN, string>>;
