import {
  Color,
  DoubleSide,
  LineBasicMaterial,
  LineDashedMaterial,
  type Material,
  MeshBasicMaterial,
  MeshMatcapMaterial,
  type Texture,
} from 'three';
import type { PartType } from '../../parts/contract';
import type { Palette } from '../drawing/palette';
import { matcapTexture, type Sheen } from './matcap';

const WHITE = new Color(0xffffff);
const BLACK = new Color(0x000000);

export type Finish = PartType['finish'];
/** How a part is shown: as it is, picked out, or as the ghost of a hidden one. */
export type Look = 'plain' | 'selected' | 'ghost';

const SHEENS: Readonly<Record<Finish, Sheen>> = {
  metal: { gloss: 26, reflection: 1, scatter: 0.62 },
  plastic: { gloss: 9, reflection: 0.35, scatter: 0.85 },
  composite: { gloss: 18, reflection: 1, scatter: 0.8 },
  neutral: { gloss: 8, reflection: 0.2, scatter: 1 },
};
/** White that a glossy dark surface gets from the room, whatever its own colour. */
const VEIL: Readonly<Record<Finish, number>> = {
  metal: 0,
  plastic: 0.006,
  composite: 0.012,
  neutral: 0,
};
const FINISHES = Object.keys(SHEENS) as Finish[];

/** Surfaces lie a hair behind their edges, so that lines stay whole. */
const BEHIND_EDGES = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 };

/** Materials of parts and of their edges, shared by all parts of a finish and painted from the page's colours. */
export class Finishes {
  /** Colour of what can be dragged, and of a selected part's outline. */
  accent = '';
  private readonly plain = new Map<Finish, MeshMatcapMaterial>();
  private readonly selected = new Map<Finish, MeshMatcapMaterial>();
  private readonly sheens: Texture[] = [];
  private readonly edges = new Map<Finish, LineBasicMaterial>();
  private readonly ghostSurface = new MeshBasicMaterial({
    transparent: true,
    opacity: 0.1,
    depthWrite: false,
    side: DoubleSide,
  });
  /** Lengths in metres, as the bodies are. */
  private readonly ghostEdge = new LineDashedMaterial({ dashSize: 0.0009, gapSize: 0.0007 });

  constructor() {
    for (const finish of FINISHES) {
      const matcap = matcapTexture(SHEENS[finish]);
      this.sheens.push(matcap);
      const options = { matcap, ...BEHIND_EDGES };
      this.plain.set(finish, new MeshMatcapMaterial(options));
      this.selected.set(finish, new MeshMatcapMaterial(options));
      this.edges.set(finish, new LineBasicMaterial({ transparent: true, opacity: 0.75 }));
    }
  }

  surface(finish: Finish, look: Look): Material {
    if (look === 'ghost') return this.ghostSurface;
    const found = (look === 'selected' ? this.selected : this.plain).get(finish);
    if (!found) throw new Error(`surface(): finish is not known: ${finish}`);
    return found;
  }

  edge(finish: Finish, look: Look): LineBasicMaterial {
    const found = look === 'ghost' ? this.ghostEdge : this.edges.get(finish);
    if (!found) throw new Error(`edge(): finish is not known: ${finish}`);
    return found;
  }

  paint(palette: Palette): void {
    this.accent = palette.accent;
    const accent = new Color(palette.accent);
    for (const finish of FINISHES) {
      const own = new Color(palette[finish]).lerp(WHITE, VEIL[finish]);
      // A dark page is a dim room.
      own.multiplyScalar(palette.dark ? 0.72 : 1);
      this.plain.get(finish)?.color.copy(own);
      this.selected.get(finish)?.color.copy(own).lerp(accent, 0.36);
      // Edges part from the surface toward the side that has room: light on dark, dark on light.
      const luminance = 0.2126 * own.r + 0.7152 * own.g + 0.0722 * own.b;
      const toward = luminance < 0.12 ? WHITE : BLACK;
      this.edges
        .get(finish)
        ?.color.copy(own)
        .lerp(toward, luminance < 0.12 ? 0.22 : 0.7);
    }
    this.ghostSurface.color.set(palette.inkQuiet);
    this.ghostEdge.color.set(palette.inkQuiet);
  }

  dispose(): void {
    for (const set of [this.plain, this.selected, this.edges]) {
      for (const material of set.values()) material.dispose();
    }
    for (const sheen of this.sheens) sheen.dispose();
    this.ghostSurface.dispose();
    this.ghostEdge.dispose();
  }
}
