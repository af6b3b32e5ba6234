/** The link that holds a whole design. */
export const SHARE = {
  'share.button': 'Share',
  'share.title': 'Share a link to this design',
  'share.note':
    'The whole design is in the link itself, packed: nothing is kept on a server, and who has the link has the design as it is now.',
  'share.link': 'Link',
  'share.length': '{length} of at most {limit} characters',
  'share.copy': 'Copy',
  'share.copied': 'Copied.',
  'share.notCopied': 'The browser did not let it be copied. Select the link and copy it by hand.',
  'share.tooLong':
    'This design makes a link of {length} characters. Letters and chats cut off links of more than {limit}: send the file instead.',
  'share.saveFile': 'Save as a file',
  'share.opened': 'Opened \u201c{name}\u201d from the link. Undo brings the last design back.',
  'share.same': 'The design of the link is the one that is open.',
  'share.refused': 'The link was not opened: {reason}. The open design is unchanged.',
  'share.arrivedTitle': 'A design came with the link',
  'share.arrived':
    '\u201c{name}\u201d, with {count} parts. It would take the place of \u201c{open}\u201d, which is open here. Undo brings that one back until the page is closed.',
  'share.keep': 'Keep mine',
  'share.open': 'Open it',
  'share.saveFirst': 'Save mine, then open it',
  'share.fault.none': 'there is no design in it',
  'share.fault.tooLong': 'it has {length} characters; at most {limit} are read',
  'share.fault.malformed': 'it holds signs that no link of this page has, or is cut off',
  'share.fault.version':
    'it was made by a later version of this page ({found}); reload the page, or ask for a file',
  'share.fault.damaged': 'it was cut off or altered on its way; ask for it again, or for a file',
  'share.fault.unpacksTooLarge': 'it unpacks to more than {limit} bytes, more than a link may hold',
} as const;
