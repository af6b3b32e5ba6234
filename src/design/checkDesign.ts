import { checkTexts } from './check';
import { checkBench } from './checkBench';
import { checkOtherGrips } from './checkGrips';
import { checkOwnMaterials } from './checkMaterials';
import { checkNumbers } from './checkMeasured';
import { checkParts, longTexts, MAX_LONG_TEXT } from './checkParts';
import { checkSections } from './checkSections';
import { checkTryOuts } from './checkTryOuts';
import type { Design } from './design';
import type { DesignFault } from './fault';
import { WEIGHED_TOTAL_LIMITS } from './measured';
import { materialsOf } from './resolve';

/** The first fault of a whole design, or null. */
export function checkDesign(design: Design): DesignFault | null {
  return checkDesignNumbers(design) ?? checkParts(design.parts, materialsOf(design));
}

/** The first fault of what belongs to the design beside its parts: texts, sections, own materials, the other grips, the try-outs. */
export function checkDesignNumbers(design: Design): DesignFault | null {
  return (
    checkTexts(design) ??
    checkSections(design) ??
    checkOwnMaterials(materialsOf(design)) ??
    checkNumbers(design.weighedTotal ?? {}, WEIGHED_TOTAL_LIMITS, 'weighedTotal') ??
    checkOtherGrips(design.otherGrips, materialsOf(design)) ??
    checkTryOuts(design) ??
    checkBench(design.bench, longTexts(design.parts), MAX_LONG_TEXT)
  );
}
