import {
  type PolarFault,
  parsePolarText,
  type TableSection,
  tableSection,
} from '../../engine/air/polar';
import type { Result } from '../../engine/result';
import type { PolarFile } from '../sections/air';

/**
 * The section that a table from a file stands for. A table of angles from zero up alone is that of a symmetric section,
 * completed by its mirror image.
 */
export function polarSection(file: PolarFile): Result<TableSection, PolarFault> {
  const read = parsePolarText(file.text);
  if (!read.ok) return read;
  const oneSided = read.value.blocks.every((block) => block.rows.every((row) => row.angleDeg >= 0));
  return tableSection(read.value, { mirror: oneSided });
}
