export const LET_GO = {
  'letGo.letGo': 'Let go',
  'letGo.letGoHelp': 'Let the grip go at this pitch, in slowed time (L)',
  'letGo.takeHold': 'Take hold',
  'letGo.takeHoldHelp': 'Hold the grip where it is (L or Esc)',
  'letGo.slowness': '1/{times} of real speed',
  'letGo.realSpeed': 'real speed',
  'letGo.chartTrail': 'Path since it was let go: what drives it, friction taken off',
  'letGo.dialFault': 'It cannot be let go here.',
  'letGo.dialPushes': 'Push {force}',
} as const;
