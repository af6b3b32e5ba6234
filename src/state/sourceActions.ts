import type { Design, Part, WeighedTotal } from '../design/design';
import type { DesignFault } from '../design/fault';
import type { Measured } from '../design/measured';
import { materialsOf } from '../design/resolve';
import type { OtherGrip } from '../design/sections/grips';
import {
  withCatalogue,
  withMaterial,
  withMeasured,
  withoutCatalogue,
  withoutMaterial,
  withoutValue,
} from '../design/writeValue';
import type { Result } from '../engine/result';
import { t } from '../messages';
import type { CatalogueReference } from '../parts/catalogue';
import type { ParameterValue } from '../parts/contract';
import type { OwnMaterial } from '../parts/materials/material';
import type { Live } from './live';
import type { Refusal } from './refusal';
import { replacePart } from './replacePart';
import type { AppStore } from './store';

/** Where a part's numbers come from: catalogue, material, measurement. Each call is one undo step. */
export interface SourceActions {
  /** Takes every dimension from a row of a standard; null: keeps the dimensions and lets go of the row. */
  setCatalogue(id: string, reference: CatalogueReference | null): Result<Part, Refusal>;
  /** Takes a density from a material; null: keeps the number and lets go of the material. */
  setMaterial(id: string, density: string, material: string | null): Result<Part, Refusal>;
  /** Lets go of a written value that catalogue, material or a default gives too. */
  clearValue(id: string, field: string): Result<Part, Refusal>;
  /** Several values at once, written as they are (a section read from a file). */
  setValues(id: string, values: Readonly<Record<string, ParameterValue>>): Result<Part, Refusal>;
  /** What was measured of a part, whole; members that are undefined are let go. */
  setMeasured(id: string, measured: Measured): Result<Part, Refusal>;
  /** The design's own materials, whole. Refused while a part names one that would be gone. */
  setOwnMaterials(materials: readonly OwnMaterial[]): Result<Design, DesignFault>;
  setWeighedTotal(weighed: WeighedTotal | null): Result<Design, DesignFault>;
  /** The other grips of the rotor, whole. */
  setOtherGrips(grips: readonly OtherGrip[]): Result<Design, DesignFault>;
}

export function createSourceActions(store: AppStore, live: Live): SourceActions {
  const get = store.getState;
  const replace = (id: string, change: (part: Part) => Part) => replacePart(live, id, change);
  return {
    setCatalogue(id, reference) {
      const measured = live.model.placed(id)?.part.measured;
      const outcome = replace(id, (part) =>
        reference
          ? withCatalogue(part, reference)
          : withoutCatalogue(part, materialsOf(get().design)),
      );
      if (outcome.ok && reference && measured) {
        store.setState({ notice: { tone: 'plain', text: t('measured.letGo') } });
      }
      return outcome;
    },
    setMaterial(id, density, material) {
      return replace(id, (part) =>
        material === null
          ? withoutMaterial(part, density, materialsOf(get().design))
          : withMaterial(part, density, material),
      );
    },
    clearValue: (id, field) => replace(id, (part) => withoutValue(part, field)),
    setValues: (id, values) => replace(id, (part) => ({ ...part, ...values }) as Part),
    setMeasured: (id, measured) => replace(id, (part) => withMeasured(part, measured)),
    setOwnMaterials(materials) {
      const { materials: _, ...rest } = get().design;
      return live.commitDesign(materials.length > 0 ? { ...rest, materials } : rest);
    },
    setWeighedTotal(weighed) {
      const { weighedTotal: _, ...rest } = get().design;
      return live.commitDesign(weighed ? { ...rest, weighedTotal: weighed } : rest);
    },
    setOtherGrips(grips) {
      const { otherGrips: _, ...rest } = get().design;
      return live.commitDesign(grips.length > 0 ? { ...rest, otherGrips: grips } : rest);
    },
  };
}
