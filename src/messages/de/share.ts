import type { SHARE as EN } from '../en/share';

/** Der Link, der einen ganzen Entwurf enthält. */
export const SHARE = {
  'share.button': 'Teilen',
  'share.title': 'Link zu diesem Entwurf teilen',
  'share.note':
    'Der ganze Entwurf steckt gepackt im Link selbst: Nichts liegt auf einem Server, und wer den Link hat, hat den Entwurf, wie er jetzt ist.',
  'share.link': 'Link',
  'share.length': '{length} von höchstens {limit} Zeichen',
  'share.copy': 'Kopieren',
  'share.copied': 'Kopiert.',
  'share.notCopied':
    'Der Browser ließ das Kopieren nicht zu. Den Link markieren und von Hand kopieren.',
  'share.tooLong':
    'Dieser Entwurf ergibt einen Link von {length} Zeichen. Briefe und Chats schneiden Links über {limit} ab: stattdessen die Datei schicken.',
  'share.saveFile': 'Als Datei sichern',
  'share.opened': '„{name}“ aus dem Link geöffnet. Rückgängig holt den letzten Entwurf zurück.',
  'share.same': 'Der Entwurf des Links ist der, der offen ist.',
  'share.refused': 'Der Link wurde nicht geöffnet: {reason}. Der offene Entwurf ist unverändert.',
  'share.arrivedTitle': 'Mit dem Link kam ein Entwurf',
  'share.arrived':
    '„{name}“, mit {count} Teilen. Er würde „{open}“ ersetzen, der hier offen ist. Rückgängig holt diesen zurück, bis die Seite geschlossen wird.',
  'share.keep': 'Meinen behalten',
  'share.open': 'Öffnen',
  'share.saveFirst': 'Meinen sichern, dann öffnen',
  'share.fault.none': 'darin ist kein Entwurf',
  'share.fault.tooLong': 'er hat {length} Zeichen; höchstens {limit} werden gelesen',
  'share.fault.malformed':
    'er enthält Zeichen, die kein Link dieser Seite hat, oder ist abgeschnitten',
  'share.fault.version':
    'er stammt aus einer späteren Fassung dieser Seite ({found}); Seite neu laden oder um eine Datei bitten',
  'share.fault.damaged':
    'er wurde unterwegs abgeschnitten oder verändert; noch einmal um ihn bitten oder um eine Datei',
  'share.fault.unpacksTooLarge':
    'entpackt hat er mehr als {limit} Byte, mehr als ein Link enthalten darf',
} satisfies Readonly<Record<keyof typeof EN, string>>;
