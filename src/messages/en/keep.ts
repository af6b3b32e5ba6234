export const KEEP = {
  'keep.title': 'Designs in this browser, and earlier states',
  'keep.otherTab':
    'This design is open in another tab, which keeps it. What you change here is kept as a copy.',
  'keep.takeOver': 'Take over here',
  'keep.copy': 'Work on a copy',
  'keep.saveFile': 'Save as a file',
  'keep.trouble.full':
    'Not kept: the browser\u2019s storage is full. Your work is in memory only; save it as a file. Designs that are removed and then deleted make room.',
  'keep.trouble.refused':
    'Not kept: the browser does not let this page store anything. Your work is in memory only; save it as a file.',
  'keep.trouble.blocked':
    'Not kept: another tab with an older page holds the storage. Close it, or save your work as a file.',
  'keep.trouble.newerPage':
    'Not kept: a newer version of this page has changed the storage. Save your work as a file, then reload.',
  'keep.trouble.slow':
    'Not kept: the browser\u2019s storage does not answer. Your work is in memory only; save it as a file.',
  'keep.trouble.broken':
    'Not kept: the browser\u2019s storage fails. Your work is in memory only; save it as a file.',
  'keep.slow': 'The browser is slow to store the design. What you did last is not kept yet.',
  'keep.recovered': 'The browser stores the design again: all of it is kept.',
  'keep.thinned':
    'The browser\u2019s storage is full. To keep your work, earlier states without a name were let go: {states}. Save designs as files, and delete those you no longer want.',
  'keep.thinnedRemoved':
    'The browser\u2019s storage is full. To keep your work, removed designs were let go for good: {removed}. Save designs as files, and delete those you no longer want.',
  'keep.thinnedBoth':
    'The browser\u2019s storage is full. To keep your work, earlier states without a name ({states}) and removed designs ({removed}) were let go for good. Save designs as files.',
  'keep.copiedElsewhere':
    'Another tab works on this design. Yours goes on as a copy; both are listed under the clock beside Open.',
  'keep.copiedConflict':
    'This design was changed or removed elsewhere. Yours goes on as a copy; nothing was written over.',
  'keep.copiedNewer':
    'A newer version of this page has written this design. Yours goes on as a copy; that one is left alone.',
  'keep.caughtUp': 'Brought up to date with what the other tab did. Undo shows what stood here.',
  'keep.lost':
    'The browser has thrown away the designs that were kept here. A file on your own disk is safe from that.',
  'keep.unread':
    'The designs kept in this browser cannot be read now. Nothing is written over them; reload to try again.',
  'keep.damaged':
    'The latest design could not be read ({reason}). It and its earlier states are under the clock beside Open, not thrown away.',
  'keep.newer':
    'The latest design was made by a newer version of this page. It is left alone; reload to get that version.',
  'keep.opened': '{name} opened. Undo goes back to what was open.',
  'keep.footKeeping': 'Keeping \u2026',
  'keep.footOtherTab': 'Another tab keeps it',
} as const;
