import { BLADE_TEXTS } from './parts/blade';
import { BODY_TEXTS } from './parts/bodies';
import { FASTENER_TEXTS } from './parts/fasteners';
import { GRIP_TEXTS } from './parts/grip';

/** What part types call themselves, their parameters, choices and sockets; English keeps these texts with the types. */
export const PARTS: Readonly<Record<string, string>> = {
  ...GRIP_TEXTS,
  ...BLADE_TEXTS,
  ...FASTENER_TEXTS,
  ...BODY_TEXTS,
  'group.Planform': 'Grundriss',
  'group.Section': 'Profil',
  'group.Root': 'Wurzel',
  'group.Build': 'Aufbau',
  'group.Spar': 'Holm',
  'group.Second spar': 'Zweiter Holm',
  'group.Tip weight': 'Randgewicht',
  'group.Second weight': 'Zweites Gewicht',
  'group.Strength': 'Festigkeit',
  'group.Mass': 'Masse',
  'group.Friction and load': 'Reibung und Last',
};
