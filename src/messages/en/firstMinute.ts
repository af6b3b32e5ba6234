/** What a newcomer may try first. */
export const FIRST_MINUTE = {
  'first.title': 'Three things to try',
  'first.step.bolt': 'Drag the bolt\u2019s head out until the verdict changes.',
  'first.step.dial': 'Turn the dial to 20\u00b0 and read the push-rod force.',
  'first.step.find': 'Let Neutralise find what cancels it.',
  'first.show.bolt': 'Shows the bolt and its handles',
  'first.show.dial': 'Goes to the dial',
  'first.show.find': 'Goes to the room Neutralise; press Find there',
  'first.done': 'Done: {step}',
  'first.toDo': 'To do: {step}',
  'first.count': '{done} of {of} done.',
  'first.all':
    'That is the whole of it: weight in the right place, and how much. The rest is under Learn.',
  'first.dismiss': 'Do not show this again',
  'first.again': 'Show the first steps again',
} as const;
