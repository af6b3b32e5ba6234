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
/** Of a space that must stay free: nothing in it, or something. */
export type Space = 'space' | 'clash';

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
  /** Of the outline of a part that enters a keep-out. */
  warning = '';
  private readonly plain = new Map<Finish, MeshMatcapMaterial>();
  private readonly selected = new Map<Finish, MeshMatcapMaterial>();
  private readonly sheens: Texture[] = [];
  private readonly edges = new Map<Finish, LineBasicMaterial>();
  private readonly ghostSurface = new MeshBasicMaterial({
    transparent: true,
    opacity: 0.1,
    depthWrite: false,
    side: DoubleSide,
    // Of one colour: the order of its sides makes no difference.
    forceSinglePass: true,
  });
  /** Lengths in metres, as the bodies are. */
  private readonly ghostEdge = new LineDashedMaterial({ dashSize: 0.0009, gapSize: 0.0007 });

  /** Space that must stay free, and space that something enters. */
  private readonly space = { surface: seeThrough(0.14), edge: new LineBasicMaterial() };
  private readonly clash = { surface: seeThrough(0.3), edge: new LineBasicMaterial() };

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

  surface(finish: Finish, look: Look | Space): Material {
    if (look === 'ghost') return this.ghostSurface;
    if (look === 'space' || look === 'clash') return this[look].surface;
    const found = (look === 'selected' ? this.selected : this.plain).get(finish);
    if (!found) throw new Error(`surface(): finish is not known: ${finish}`);
    return found;
  }

  edge(finish: Finish, look: Look | Space): LineBasicMaterial {
    if (look === 'space' || look === 'clash') return this[look].edge;
    const found = look === 'ghost' ? this.ghostEdge : this.edges.get(finish);
    if (!found) throw new Error(`edge(): finish is not known: ${finish}`);
    return found;
  }

  paint(palette: Palette): void {
    this.accent = palette.accent;
    this.warning = palette.warning;
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
    this.space.surface.color.set(palette.inkQuiet);
    this.space.edge.color.set(palette.inkQuiet);
    this.clash.surface.color.set(palette.warning);
    this.clash.edge.color.set(palette.warning);
  }

  dispose(): void {
    for (const set of [this.plain, this.selected, this.edges]) {
      for (const material of set.values()) material.dispose();
    }
    for (const sheen of this.sheens) sheen.dispose();
    this.ghostSurface.dispose();
    this.ghostEdge.dispose();
    for (const { surface, edge } of [this.space, this.clash]) {
      surface.dispose();
      edge.dispose();
    }
  }
}

function seeThrough(opacity: number): MeshBasicMaterial {
  return new MeshBasicMaterial({ transparent: true, opacity, depthWrite: false, side: DoubleSide });
}
