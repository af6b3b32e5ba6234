export const OFFLINE = {
  'offline.title': 'This page',
  'offline.kept.no': 'The page is not kept for use without a network yet.',
  'offline.kept.fetching': 'The page is being kept for use without a network.',
  'offline.kept.yes': 'The page is kept in this browser and opens without a network.',
  'offline.kept.unable':
    'This browser does not keep the page here: without a network it will not open. Designs saved as files are not touched by that.',
  'offline.keptLater':
    'What reads and writes STEP (23 and 8 MB) is kept when it is first used; before that it needs the network once.',
  'offline.licences': 'Licences of what this page is made of',
  'offline.update': 'A newer version of this page lies ready.',
  'offline.updateTaken': 'Another tab has taken a newer version; this one goes on with the old.',
  'offline.updateKeeps': 'Loading it opens the page anew, with your design as it is.',
  'offline.updateSaveFirst':
    'This tab does not keep your design by itself: save it as a file first.',
  'offline.take': 'Load it',
  'offline.takeAnyway': 'Load it anyway',
  'offline.notNow': 'Not now',
} as const;
