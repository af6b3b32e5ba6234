/** Lessons: what the page says around them. The texts of a lesson itself are in its file. */
export const LESSONS = {
  'lessons.line': 'Lesson on the stage',
  'lessons.onStage': 'This is the head of the lesson \u201c{title}\u201d.',
  'lessons.waits': 'Your own design, {name}, waits untouched.',
  'lessons.stepDone': 'That step is done: go on under Lessons.',
  'lessons.leave': 'Back to my design',
  'lessons.take': 'Take this head as my design',
  'lessons.takeHelp':
    'Opens the head as it stands now in place of your design. Undo brings yours back.',
  'lessons.taken': 'Opened {name} from the lesson.',
  'lessons.refused': 'This lesson file was not opened. {reason}',
} as const;
