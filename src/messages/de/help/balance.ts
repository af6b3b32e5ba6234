import type { HELP_BALANCE as EN } from '../../en/help/balance';

/** Entries: whether the grips match. */
export const HELP_BALANCE = {
  'help.unbalance.name': 'Statische Unwucht',
  'help.unbalance.what':
    'Die Massen der Blatthalter mal den Abständen ihrer Schwerpunkte von der Welle, als Pfeile addiert. Gleiche Blatthalter lassen nichts übrig.',
  'help.unbalance.sign': 'Ein Betrag, dazu der Winkel, unter dem sie liegt.',
  'help.unbalance.formula': 'U = |∑ m r|',
  'help.balanceGrade.name': 'Wuchtgüte',
  'help.balanceGrade.what':
    'Unwucht mal Drehzahl durch die Masse des Rotors: So schnell taumelt ein freier Rotor. Die Gütestufen G der Norm stehen in mm/s.',
  'help.balanceGrade.sign': 'Positiv; kleiner ist besser.',
  'help.shaftForce.name': 'Rüttelkraft',
  'help.shaftForce.what':
    'Wie stark die Unwucht bei der Drehzahl des Entwurfs an der Welle zieht; die Kraft läuft mit um.',
  'help.shaftForce.sign': 'Ein Betrag.',
} as const satisfies Readonly<Record<keyof typeof EN, string>>;
