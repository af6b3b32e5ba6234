import type { Design } from '../../design/design';
import { serializeDesign } from '../../design/file';
import { fnv1a } from '../revision';

/** Mark of a design's state: `fnv1a` of its file text. */
export function revisionMark(design: Design): string {
  return fnv1a(serializeDesign(design));
}
