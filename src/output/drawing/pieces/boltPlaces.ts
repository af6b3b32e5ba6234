import { threadRootDiameter } from '../../../engine/mass/thread';
import type { ValuesByKind } from '../../../parts/registry';
import type { SizeWriter } from '../sizeWriter';

type Bolt = ValuesByKind['bolt'];

/** Places along a bolt, mm from the top of its head or extension, and its thread's radii. */
export interface Places {
  readonly extension: number;
  readonly seat: number;
  readonly threadFrom: number;
  readonly end: number;
  readonly radius: number;
  readonly root: number;
  readonly point: number;
  readonly headed: boolean;
  /** The extension runs on from a plain head of its own diameter: one cylinder, dimensioned as one. */
  readonly merged: boolean;
}

export function placesOf(values: Bolt, writer: SizeWriter): Places {
  const headed = values.headForm !== 'none';
  const extension = values.extensionLengthMm;
  const seat = extension + (headed ? values.headHeightMm : 0);
  const end = seat + values.lengthMm;
  const radius = values.shankDiameterMm / 2;
  return {
    extension,
    seat,
    end,
    threadFrom: end - values.threadLengthMm,
    radius,
    root: threadRootDiameter(values.shankDiameterMm, values.threadPitchMm) / 2,
    point: values.pointDiameterMm / 2,
    headed,
    merged: isMerged(values, writer),
  };
}

export function isMerged(values: Bolt, writer: SizeWriter): boolean {
  return (
    values.headForm === 'cap' &&
    values.extensionLengthMm > 0 &&
    values.headChamferMm === 0 &&
    values.extensionDiameterMm === values.headDiameterMm &&
    !['extensionLengthMm', 'headHeightMm', 'extensionDiameterMm', 'headDiameterMm'].some(
      writer.hasOwn,
    )
  );
}
