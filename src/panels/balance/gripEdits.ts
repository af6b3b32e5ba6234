import { describeFault } from '../../design/faultText';
import { parseDesign } from '../../design/file';
import type { OtherGrip } from '../../design/sections/grips';
import { t } from '../../messages';
import type { Session } from '../../state/session';
import { utf8Text } from '../../ui/fileErrors';

/** Larger files are not even read. */
const MAX_BYTES = 64 * 1024 * 1024;

/** The other grips as a list that is long enough for grip `index` (1 is the first other). */
function listUpTo(grips: readonly OtherGrip[], index: number): OtherGrip[] {
  const list = [...grips];
  while (list.length < index) list.push({ name: '' });
  return list;
}

/** Puts changed members into another grip; undefined lets go of one. What says nothing at the end is left out. */
export function changeGrip(
  session: Session,
  index: number,
  change: { readonly [K in keyof OtherGrip]?: OtherGrip[K] | undefined },
): string | null {
  const { design } = session.store.getState();
  const list = listUpTo(design.otherGrips ?? [], index);
  const merged = Object.entries({ ...list[index - 1], ...change }).filter(
    ([, value]) => value !== undefined,
  );
  list[index - 1] = Object.fromEntries(merged) as unknown as OtherGrip;
  while (list.length > 0 && saysNothing(list[list.length - 1])) list.pop();
  const outcome = session.actions.setOtherGrips(list);
  return outcome.ok ? null : describeFault(outcome.error);
}

function saysNothing(grip: OtherGrip): boolean {
  return grip.name === '' && Object.keys(grip).length === 1;
}

/** Another grip as drawn again, its name kept. */
export function resetGrip(session: Session, index: number): string | null {
  return changeGrip(session, index, {
    parts: undefined,
    partMassesGrams: undefined,
    massGrams: undefined,
    stationMm: undefined,
  });
}

/** Weighs one part of another grip; undefined lets go of it. */
export function weighPartOf(
  session: Session,
  index: number,
  part: string,
  massGrams: number | undefined,
): string | null {
  const grip = session.store.getState().design.otherGrips?.[index - 1];
  const { [part]: _, ...rest } = grip?.partMassesGrams ?? {};
  const next = massGrams === undefined ? rest : { ...rest, [part]: massGrams };
  return changeGrip(session, index, {
    partMassesGrams: Object.keys(next).length > 0 ? next : undefined,
  });
}

/** Takes the list of parts of another design's file for a grip. The reason in words where it is refused. */
export function takeParts(session: Session, index: number, text: string): string | null {
  const read = parseDesign(text);
  if (!read.ok) return t('balance.unread', { reason: describeFault(read.error) });
  // What was weighed was another grip's.
  return changeGrip(session, index, {
    parts: read.value.parts,
    partMassesGrams: undefined,
    massGrams: undefined,
    stationMm: undefined,
  });
}

/** The same from a file as it was chosen. */
export async function takePartsFile(
  session: Session,
  index: number,
  file: File,
): Promise<string | null> {
  if (file.size > MAX_BYTES) {
    const reason = t('app.fileTooLarge', { limit: MAX_BYTES / 1024 / 1024 });
    return t('balance.unread', { reason });
  }
  const text = await utf8Text(file);
  if (text === null) return t('balance.unread', { reason: t('app.notUtf8') });
  return takeParts(session, index, text);
}
