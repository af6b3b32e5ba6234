import { markedText } from '../../../state/words/markedText';
import { MathText } from '../../../ui/MathText';
import { useAppState } from '../../../ui/session';

/** A text of a lesson: its quantities in the chosen units, its symbols as in a book. */
export function LessonText({ text }: { readonly text: string }) {
  const units = useAppState((state) => state.settings.units);
  return <MathText text={markedText(text, units)} />;
}
