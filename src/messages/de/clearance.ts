import type { CLEARANCE as EN } from '../en/clearance';

export const CLEARANCE = {
  'clearance.none':
    'Noch ist nichts freizuhalten. Gehäuse, Seitenflosse oder Nabe als Sperrzone einsetzen: Sie wiegt nichts, und der kleinste Abstand dazu wird über alle Einstellwinkel und eine volle Umdrehung der Welle gesucht.',
  'clearance.add': 'Sperrzone zufügen',
  'clearance.add.plane': 'Ebene',
  'clearance.add.box': 'Quader',
  'clearance.add.cylinder': 'Zylinder',
  'clearance.add.mesh': 'Aus einer Netzdatei…',
  'clearance.name.plane': 'Sperrebene',
  'clearance.name.box': 'Sperrquader',
  'clearance.name.cylinder': 'Sperrzylinder',
  'clearance.table': 'Abstände, der kleinste zuerst',
  'clearance.part': 'Teil',
  'clearance.keepOut': 'Sperrzone',
  'clearance.gap': 'Kleinster Abstand',
  'clearance.error': 'Genau auf',
  'clearance.pitch': 'Bei Winkel',
  'clearance.azimuth': 'Welle gedreht',
  'clearance.state': 'Zustand',
  'clearance.go': 'Dorthin',
  'clearance.goTo': '{pitch} einstellen und {part} wählen',
  'clearance.any': 'beliebig',
  'clearance.hub': 'dreht mit',
  'clearance.in': '{depth} darin',
  'clearance.is.clear': 'frei',
  'clearance.is.close': 'näher als gewünscht',
  'clearance.is.overlap': 'dringt ein',
  'clearance.is.inside': 'umschließt sie ganz',
  'clearance.reduced':
    'Ein Netz mit mehr Dreiecken, als gezeichnet werden, wird an seinem Bild gemessen: Wie weit das abweicht, ist nicht bekannt.',
  'clearance.nearest': 'Am nächsten: {part} an {keepOut}, {length} bei {pitch}.',
  'clearance.overlap': '{part} dringt bei {pitch} um {depth} in {keepOut} ein.',
  'clearance.overlapInside': '{part} umschließt {keepOut} bei {pitch} ganz.',
  'clearance.more': 'Und {count} weitere.',
  'clearance.range.linkage':
    'Abgesucht von {low} bis {high}, so weit das Gestänge geht, und über eine volle Umdrehung der Welle an allem vorbei, was am Gehäuse sitzt.',
  'clearance.range.noLinkage':
    'Abgesucht von {low} bis {high}: Kein Steuerhebel sagt, wie weit der Blatthalter gehen kann. Eine volle Umdrehung der Welle an allem vorbei, was am Gehäuse sitzt.',
  'clearance.range.noReach':
    'Abgesucht von {low} bis {high}: Die Steuerstange erreicht in Flachstellung den Schieber nicht und bleibt außer Betracht.',
  'clearance.notes':
    'Ein Blatt gilt dort, wo es gezeichnet ist, nicht wo es am Bolzen hinschwenkt. Teile biegen sich, Lager haben Spiel: Beides geht vom Abstand ab.',
  'clearance.stage': '{length} bei {pitch}',
  'clearance.stageIn': '{length} darin bei {pitch}',
  'clearance.stageTurned': '{text}, Welle um {azimuth} gedreht',
  'clearance.noParts': 'Kein sichtbares Teil dreht sich.',
  'clearance.useAsKeepOut': 'Als Sperrzone verwenden',
  'clearance.useAsKeepOutHelp':
    'Es wiegt dann nichts, steht still, und drehende Teile müssen davon frei bleiben. Werkstoff und Messungen daran fallen weg.',
  'clearance.useAsBody': 'Als Körper am Blatthalter verwenden',
  'clearance.useAsBodyHelp':
    'Es dreht sich dann mit dem Blatthalter und wiegt, was seine Dichte sagt.',
  'clearance.placement':
    'Angeordnet im Rotorsystem: x nach außen, rechtwinklig zur Welle, z längs der Welle. Bei einer Ebene muss alles auf der Seite frei bleiben, von der ihr z wegzeigt.',
  'clearance.nearestHere': 'Am nächsten: {part}, {length} bei {pitch}.',
} satisfies Readonly<Record<keyof typeof EN, string>>;
