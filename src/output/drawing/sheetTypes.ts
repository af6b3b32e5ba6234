/**
 * A drawing as plain data, in mm on paper: origin at the lower left corner of the sheet, x to the right, y up. Angles in
 * degrees, counter-clockwise from x. Renderers (`sheetSvg`, `sheetDxf`, `sheetPdf`) add nothing to it.
 */
export const LAYERS = [
  'visible',
  'thread',
  'hatch',
  'centre',
  'dimension',
  'text',
  'frame',
  'check',
] as const;
export type Layer = (typeof LAYERS)[number];

/** Line widths of the group 0.5 (ISO 128-2): wide to thin as 2 to 1, mm. */
export const WIDE = 0.5;
export const THIN = 0.25;

/** Width of each layer's lines, and the lengths of dash and gap of its line type (ISO 128-2: 04.1 long dash, dot); mm. */
export const LINE_STYLES: Readonly<
  Record<Layer, { readonly width: number; readonly dashes?: readonly number[] }>
> = {
  visible: { width: WIDE },
  thread: { width: THIN },
  hatch: { width: THIN },
  centre: { width: THIN, dashes: [6, 0.75, 0.125, 0.75] },
  dimension: { width: THIN },
  text: { width: THIN },
  frame: { width: WIDE },
  check: { width: WIDE },
};

export interface LineEntity {
  readonly shape: 'line';
  readonly layer: Layer;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}
export interface CircleEntity {
  readonly shape: 'circle';
  readonly layer: Layer;
  readonly x: number;
  readonly y: number;
  readonly r: number;
}
/** Counter-clockwise from `from` to `to`. */
export interface ArcEntity {
  readonly shape: 'arc';
  readonly layer: Layer;
  readonly x: number;
  readonly y: number;
  readonly r: number;
  readonly from: number;
  readonly to: number;
}
/** A filled arrowhead with its tip at (x, y), pointing along `angle`. */
export interface ArrowEntity {
  readonly shape: 'arrow';
  readonly layer: Layer;
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}
/** A line of text; (x, y) is on its base line. `turned`: to be read from the right. `height` is that of a capital. */
export interface TextEntity {
  readonly shape: 'text';
  readonly layer: Layer;
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turned?: boolean;
  /** Number of the dimension that it is the text of. */
  readonly dimension?: string;
}
export type Entity = LineEntity | CircleEntity | ArcEntity | ArrowEntity | TextEntity;

export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export type Projection = 'first' | 'third';
export type LengthUnit = 'mm' | 'in';

export interface SheetFormat {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

export interface Scale {
  /** "5:1" (ISO 5455). */
  readonly name: string;
  /** Length on paper over that of the part. */
  readonly factor: number;
}

export interface Sheet {
  readonly format: SheetFormat;
  readonly scale: Scale;
  readonly unit: LengthUnit;
  readonly projection: Projection;
  readonly title: string;
  /** Where the left end of the part's axis lies in the main view: the zero point of a file in the part's own size. */
  readonly origin: readonly [x: number, y: number];
  readonly entities: readonly Entity[];
  /** Drawing area within the frame. */
  readonly frame: Box;
  /** What the dimensions say, one each. */
  readonly dimensions: readonly { readonly feature: string; readonly text: string }[];
}

export const ARROW_LENGTH = 2.5;
export const ARROW_WIDTH = 0.85;
