import type { BALANCE as EN } from '../en/balance';

export const BALANCE = {
  'balance.about':
    'Gegenüberliegende Blatthalter müssen in Masse und Lage der Masse gleich sein. Die Steuerstangen bleiben außer Betracht: Sie sind gleich.',
  'balance.grip': 'Blatthalter',
  'balance.mass': 'Masse',
  'balance.station': 'Schwerpunkt',
  'balance.from': 'Aus',
  'balance.change': 'Ändern',
  'balance.first': 'Blatthalter 1, wie gezeichnet',
  'balance.nth': 'Blatthalter {n}',
  'balance.from.drawn': 'wie gezeichnet',
  'balance.from.ownParts': 'eigene Teile',
  'balance.from.partMasses': 'Teile gewogen',
  'balance.from.weighed': 'im Ganzen gewogen',
  'balance.none': 'Ausgewuchtet: Alle Blatthalter sind gleich.',
  'balance.noHub':
    'Für die Gütestufe nach ISO 21940-11 die Masse der Nabe angeben: Die Stufe gilt für den ganzen Rotor.',
  'balance.unbalance':
    'Unwucht {unbalance}, bei {angle}° ab Blatthalter 1 in Drehrichtung des Rotors.',
  'balance.force': 'Sie zieht mit {force} umlaufend an der Welle.',
  'balance.grade': 'Gütestufe G {value} mm/s: hält G {standard} nach ISO 21940-11 ein.',
  'balance.noGrade': 'Gütestufe G {value} mm/s: schlechter als jede Stufe nach ISO 21940-11.',
  'balance.correct': '{mass} bei {station} an {grip} zugeben.',
  'balance.left':
    'Quer zu den Achsen bleiben {left}: Gewicht längs zweier Blätter kann das nicht aufheben.',
  'balance.leftOne': '{left} bleiben: Ein einzelnes Blatt braucht gegenüber ein Gegengewicht.',
  'balance.tiny': 'weniger als 0,01 g',
  'balance.name': 'Name',
  'balance.whole': 'Im Ganzen gewogen',
  'balance.wholeHelp': 'Der ganze Blatthalter auf der Waage, ohne Steuerstange.',
  'balance.centre': 'Schwerpunkt',
  'balance.centreHelp': 'Ab der Welle längs der Verstellachse; auf einer Kante auspendeln.',
  'balance.asParts': 'wie seine Teile',
  'balance.asDrawn': 'wie gezeichnet',
  'balance.partsHelp': 'Oder einzelne Teile davon wiegen:',
  'balance.partHelp': 'Dieses Teil dieses Blatthalters auf der Waage; leer: wie gezeichnet.',
  'balance.fromFile': 'Teile aus einer Entwurfsdatei…',
  'balance.reset': 'Wieder wie gezeichnet',
  'balance.unread': 'Die Datei konnte nicht gelesen werden: {reason}',
} satisfies Readonly<Record<keyof typeof EN, string>>;
