import type { FAMILY as EN } from '../en/family';

export const FAMILY = {
  'family.none':
    'Kein Teil dieses Kopfes hat eine Länge und einen Durchmesser, die Masse längs des Bolzens hinaustragen.',
  'family.of': 'Familie von',
  'family.ofTitle': 'Jedes Paar aus dieser Länge und diesem Durchmesser, das das Ziel erreicht',
  'family.diameters': 'Durchmesser bis',
  'family.lengths': 'Länge bis',
  'family.bar': 'Dickste Stange',
  'family.barHelp': 'Dickstes Stangenmaterial, das es gibt: Was dicker ist, ist schattiert.',
  'family.rangeHelp': 'Ende des Diagramms.',
  'family.materials': 'Werkstoffe ({count})',
  'family.running': 'Wird berechnet: {done} von {total}',
  'family.cancel': 'Abbrechen',
  'family.cancelled': 'Abgebrochen.',
  'family.again': 'Berechnen',
  'family.failed': 'Ließ sich nicht berechnen: {reason}',
  'family.axisX': 'Durchmesser, {unit}',
  'family.axisY': '{length}, {unit}',
  'family.asItIs': 'wie es ist',
  'family.forbidden': 'Schraffiert für {material}:',
  'family.forbidden.rule': 'nicht herstellbar',
  'family.forbidden.bolt': 'Bolzen überlastet',
  'family.forbidden.bearing': 'Lager überlastet',
  'family.forbidden.clearance': 'zu nah an einer Sperrzone',
  'family.forbidden.stock': 'dicker als die Stange',
  'family.forbidden.short': 'Bolzen zu kurz für seine Mutter',
  'family.forbiddenNone': 'hier ist nichts verboten',
  'family.noCurve':
    'Kein Paar im Diagramm erreicht das Ziel: das Diagramm länger oder breiter machen.',
  'family.handle': 'Entlang der Familie: Durchmesser',
  'family.handleText': '{diameter} Durchmesser, {length} lang, {material}, Blatthalter {mass}',
  'family.legend': 'Was das Diagramm zeigt',
  'family.drag':
    'An einer Kurve entlangziehen: Der Kopf folgt. Pfeiltasten gehen schrittweise, auf und ab wechseln den Werkstoff.',
  'family.summary': '{material}: {points}.',
  'family.summaryPoint': '{diameter} Durchmesser und {length} lang',
} satisfies Readonly<Record<keyof typeof EN, string>>;
