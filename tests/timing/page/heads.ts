import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

interface DesignFile {
  name: string;
  counted: Record<string, boolean>;
  parts: Record<string, unknown>[];
}

/** The demo head that the page opens with, everything counted, and as many small turned lumps more as make `count` parts. */
export function headOf(count: number): DesignFile {
  const path = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const design = JSON.parse(readFileSync(fileURLToPath(path), 'utf8')) as DesignFile;
  design.counted = { rodMass: true, air: true, friction: true };
  const more = Math.max(0, count - design.parts.length);
  design.name = `${design.parts.length + more} parts`;
  for (let k = 0; k < more; k++) {
    design.parts.push({
      id: `lump-${k}`,
      kind: 'cylinder',
      name: `Lump ${k + 1}`,
      diameterMm: 2 + (k % 5) / 4,
      lengthMm: 2 + (k % 7) / 3,
      boreMm: 0,
      densityKgM3: 7850,
      pose: {
        positionMm: [40 + 4 * (k % 20), -18 + 4 * (Math.floor(k / 20) % 10), 14],
        rotationDeg: [0, 0, 0],
      },
    });
  }
  return design;
}
