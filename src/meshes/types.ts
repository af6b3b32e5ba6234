/**
 * What the mesh room hands over: plain data that crosses from the worker to the page. Lengths are in the file's own
 * unit until a person has chosen one; nothing here is in SI.
 */

/** What the bytes turned out to be. */
export type MeshFormat = 'stlBinary' | 'stlText' | 'obj' | '3mf' | 'glb' | 'step';

/** Units that a file can mean. */
export const FILE_UNITS = ['mm', 'cm', 'm', 'in', 'micron', 'ft'] as const;
export type FileUnit = (typeof FILE_UNITS)[number];

/** More is refused, with the number, before memory is taken. */
export const MAX_TRIANGLES = 5_000_000;
/**
 * Triangles that a file may come to by placing its bodies again and again (GLB, 3MF): this many, or one for each of its bytes
 * where that is more. A triangle that stands in a file takes a byte at the very least (a strip with indices of one byte).
 */
export const ALWAYS_PLACED = 50_000;
/** Largest file that is opened, bytes. Five million triangles of text STL are about 1.3e9. */
export const MAX_FILE_BYTES = 1_500_000_000;
/** Largest coordinate, in file units: a kilometre in microns. Beyond it a number is a fault and not a place. */
export const MAX_COORDINATE = 1e9;
/** A triangle surface as the file has it: xyz triples in file units, and index triples, each within range. */
export interface RawMesh {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
  /** The points come from one `PointPool` in the order in which the triangles use them: no two are equal. */
  readonly pooled?: true;
  /** The unit that the file itself states; absent where the format has none (STL, OBJ). */
  readonly unitInFile?: FileUnit;
  readonly notes: readonly MeshNote[];
}

/** Why a file gives no mesh at all. `detail` completes "the file cannot be read because it ..." in a person's words. */
export type MeshFileFault =
  | { readonly kind: 'empty' }
  /** The bytes are none of the known formats; `extension` is the name's, small letters, without the dot. */
  | { readonly kind: 'unknownFormat'; readonly extension: string }
  | { readonly kind: 'fileTooLarge'; readonly bytes: number; readonly limit: number }
  | { readonly kind: 'tooManyTriangles'; readonly count: number; readonly limit: number }
  | { readonly kind: 'noTriangles'; readonly format: MeshFormat }
  | { readonly kind: 'malformed'; readonly format: MeshFormat; readonly detail: string }
  /** The file needs something that is not supported; `name` as the file calls it. */
  | { readonly kind: 'unsupported'; readonly format: MeshFormat; readonly name: string }
  /** What it unpacks to outgrows a limit: a zip bomb, or a file too large for the page. */
  | {
      readonly kind: 'unpacksTooLarge';
      readonly format: MeshFormat;
      readonly what: 'bytes' | 'ratio' | 'entries';
      readonly limit: number;
    }
  | { readonly kind: 'cancelled' }
  /** The reader itself gave up: out of memory, worker gone. `detail` is the browser's word. */
  | { readonly kind: 'readerFailed'; readonly detail: string }
  /** The browser ended the worker that read it. */
  | { readonly kind: 'readerEnded' };

/** Something a person should know of a file that was read. */
export type MeshNote =
  | { readonly kind: 'extensionDiffers'; readonly extension: string; readonly format: MeshFormat }
  /** Bytes after the last triangle of a binary STL. */
  | { readonly kind: 'trailingBytes'; readonly bytes: number }
  /** Points and lines beside the triangles (OBJ, GLB), left out. */
  | {
      readonly kind: 'leftOut';
      readonly what: 'lines' | 'supports' | 'skins';
      readonly count: number;
    }
  /** Faces of more than three corners that are not convex, cut as a fan all the same. */
  | { readonly kind: 'concaveFaces'; readonly count: number }
  /** A CAD file was cut into triangles; greatest distance from the true surface in mm, and greatest angle in degrees. */
  | { readonly kind: 'tessellated'; readonly deflectionMm: number; readonly angleDeg: number };

/** Where the reading is. `share` in [0, 1] of this step; absent where it cannot be told. */
export interface MeshProgress {
  readonly step: 'open' | 'unpack' | 'read' | 'kernel' | 'check' | 'crossings' | 'picture';
  readonly share?: number;
}

/** What crosses or is enclosed twice. */
export interface CrossingReport {
  /**
   * Pairs of triangles that pierce each other; none where they meet on their borders alone and nothing is enclosed twice or
   * negatively, as where bodies lie on one another.
   */
  readonly pairs: number;
  /** False where the search stopped at its limit of pairs or time: there may be more. */
  readonly finished: boolean;
  /**
   * Estimate of the volume that the moments count more than once (file units cubed) and of the volume they count
   * negatively; from rays along x (along all axes where triangles meet on their borders alone), so a body thinner than
   * their spacing can be missed. Zero where nothing crosses, null where the surface is too intricate to follow.
   */
  readonly countedTwice: number | null;
  readonly countedNegative: number | null;
}

/** One way to take the file's numbers. */
export interface UnitReading {
  readonly unit: FileUnit;
  /** Longest side of the box in this unit, mm. */
  readonly sizeMm: number;
  /** Within 1 to 400 mm, as grips and their parts are. */
  readonly plausible: boolean;
}
export interface UnitGuess {
  /** What to take unless the person says otherwise. */
  readonly unit: FileUnit;
  /** Where it comes from: the file says it; millimetres as is the habit; the only likely size. */
  readonly because: 'stated' | 'habit' | 'size' | 'nothingFits';
  /** All units with the size that each would give; the part is only sure when one is plausible. */
  readonly readings: readonly UnitReading[];
  /** The stated unit makes the part implausible and another does not: "30 m long; probably mm". */
  readonly slip?: { readonly stated: UnitReading; readonly likely: UnitReading };
}

/**
 * 'sound': closed, turned outward, nothing crosses: weighed exactly.
 * 'crossing': closed, but parts of the surface pierce or contain each other: what lies in two shells is counted twice.
 * Weighed as it stands, with an estimate of what is counted too often, and the person has to accept it: only they know
 * whether the bodies are meant to be one.
 * 'cracked': it does not close, or cannot be turned outward: there is no volume to speak of, and none is given.
 */
export type MeshVerdict = 'sound' | 'crossing' | 'cracked';

export interface MeshReport {
  readonly format: MeshFormat;
  readonly notes: readonly MeshNote[];
  readonly verdict: MeshVerdict;
  /** False exactly where the verdict is 'cracked'. */
  readonly weighable: boolean;
  /** As in the file, and after degenerate and repeated ones were dropped. */
  readonly trianglesInFile: number;
  readonly triangles: number;
  readonly points: number;
  /** Dropped: two corners in one point. */
  readonly degenerateTriangles: number;
  /** Dropped: the same three corners in the same sense as another. */
  readonly repeatedTriangles: number;
  /** Turned over to agree with their neighbours. */
  readonly flippedTriangles: number;
  /** The whole surface was inside out and was turned. */
  readonly turnedInsideOut: boolean;
  /** Single shells that were inside out though no other encloses them, turned. */
  readonly shellsTurned: number;
  /** Points that were joined across cracks narrower than `weldTolerance` (file units); 0 where only equal points were. */
  readonly joinedPoints: number;
  readonly weldTolerance: number;
  /** Connected pieces of surface, and those of them that are cavities (inside out within another). */
  readonly shells: number;
  readonly cavities: number;
  /** Edges with one triangle only. */
  readonly openEdges: number;
  /** Edges with more than two triangles. Harmless where as many run one way as the other (two bodies that touch). */
  readonly crowdedEdges: number;
  /** Edges, other than open ones, whose triangles do not cancel: a surface that cannot be turned outward. */
  readonly unorientedEdges: number;
  readonly crossing: CrossingReport;
  /** Box in file units. */
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
  readonly unit: UnitGuess;
  /** File units cubed; null where it is not weighable. */
  readonly volume: number | null;
  readonly picture: {
    readonly triangles: number;
    readonly reduced: boolean;
    /** Volume of the picture over the volume weighed; 1 within rounding unless reduced. Null where not weighable. */
    readonly volumeRatio: number | null;
  };
}

/** A file that was read and checked. */
export interface MeshImport {
  /** The file's name without folder and extension. */
  readonly name: string;
  readonly report: MeshReport;
  /**
   * The ten volume moments (density 1) in file units about the file's origin, in the order of `engine/mass/moments`;
   * null where the mesh is not weighable.
   */
  readonly volumeMoments: readonly number[] | null;
  /** The picture as text, as the part type `meshBody` holds it (`parts/meshBody/picture.ts`). */
  readonly picture: string;
}

export interface ReadMeshOptions {
  onProgress?(progress: MeshProgress): void;
  readonly signal?: AbortSignal;
}
