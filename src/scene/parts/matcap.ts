import { DataTexture, DataUtils, HalfFloatType, LinearFilter, RGBAFormat } from 'three';

/**
 * Light for the parts, worked out once: a picture of a lit sphere for each finish, which every surface looks up by the
 * way it faces the eye. Lamps hang with the camera, so that a part is well lit from wherever it is seen; nothing is
 * loaded, no light is computed per pixel, and drawing in software costs half of what physically based shading does.
 */
export interface Sheen {
  /** Sharpness of reflections: the exponent of the lobe round a lamp. */
  readonly gloss: number;
  /** Reflected lamps against scattered light; scattered light is 1. */
  readonly reflection: number;
  /** Share of scattered light; low for metal, which shows its surroundings instead. */
  readonly scatter: number;
}

interface Lamp {
  /** Toward the lamp in the eye's frame: x right, y up, z toward the eye. */
  readonly at: readonly [number, number, number];
  readonly strength: number;
  /** How broad it is: its lobe is blurred by this share. */
  readonly breadth: number;
}

const LAMPS: readonly Lamp[] = [
  { at: [-0.45, 0.75, 0.5], strength: 1.1, breadth: 0.5 },
  { at: [0.8, 0.25, 0.35], strength: 0.5, breadth: 0.7 },
  { at: [0.1, -0.8, 0.3], strength: 0.2, breadth: 1 },
];
const SKY = 0.9;
const GROUND = 0.5;
const SIZE = 96;

/** Brightness of a lit surface that faces (x, y, z) in the eye's frame, a unit vector; 1 shows the colour as it is. */
export function sheenAt(x: number, y: number, z: number, sheen: Sheen): number {
  const ambient = GROUND + (SKY - GROUND) * (0.5 + 0.5 * y);
  let scattered = ambient;
  let reflected = 0;
  // The eye's direction (0, 0, 1) mirrored at the surface.
  const mirrored = [2 * z * x, 2 * z * y, 2 * z * z - 1];
  for (const { at, strength, breadth } of LAMPS) {
    const size = Math.hypot(...at);
    const facing = (x * at[0] + y * at[1] + z * at[2]) / size;
    scattered += strength * Math.max(0, facing);
    const along = (mirrored[0] * at[0] + mirrored[1] * at[1] + mirrored[2] * at[2]) / size;
    reflected += strength * Math.max(0, along) ** (sheen.gloss * (1 - 0.7 * breadth));
  }
  // What a mirror shows of the room: bright above, dark toward the horizon, lighter below.
  const room = 0.35 + 0.5 * Math.max(0, mirrored[1]) + 0.16 * Math.max(0, -mirrored[1]);
  const rim = (1 - z) ** 3;
  return (
    sheen.scatter * scattered +
    sheen.reflection * (reflected * 1.6 + rim * 0.5) +
    (1 - sheen.scatter) * room
  );
}

/** The lit sphere as a texture; half floats, because a lamp is brighter than 1. */
export function matcapTexture(sheen: Sheen): DataTexture {
  const data = new Uint16Array(4 * SIZE * SIZE);
  const one = DataUtils.toHalfFloat(1);
  for (let row = 0; row < SIZE; row++) {
    for (let column = 0; column < SIZE; column++) {
      let x = ((column + 0.5) / SIZE) * 2 - 1;
      let y = ((row + 0.5) / SIZE) * 2 - 1;
      const radius = Math.hypot(x, y);
      if (radius > 0.999) {
        x *= 0.999 / radius;
        y *= 0.999 / radius;
      }
      const shade = sheenAt(x, y, Math.sqrt(1 - x * x - y * y), sheen);
      const half = DataUtils.toHalfFloat(shade);
      data.set([half, half, half, one], 4 * (row * SIZE + column));
    }
  }
  const texture = new DataTexture(data, SIZE, SIZE, RGBAFormat, HalfFloatType);
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}
