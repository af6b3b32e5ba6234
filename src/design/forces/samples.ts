import {
  energyAtTurn,
  type Harmonics,
  momentAtTurn,
  slopeAtTurn,
} from '../../engine/feathering/harmonics';
import type { PitchGrid } from '../../engine/feathering/pitchGrid';
import { type Radians, radians } from '../../engine/units';
import type { HeadFriction } from './headFriction';
import type { LinkColumns } from './linkColumns';
import type { MomentTerm } from './momentTerm';

type Kind = 'moment' | 'slope' | 'energy';

/**
 * A head's moment with its slope and energy at the pitches of a grid, the same to the bit as asked one by one: the four
 * harmonics with the grid's sines, and of every further term a column that is worked out once and kept as long as the term
 * is the same object. So a dragged bolt costs a few products a pitch. Columns are written anew by the next change.
 */
export class Samples {
  /** How often a term has been asked for a pitch of a grid. */
  asked = 0;
  private readonly columns = new WeakMap<PitchGrid, GridColumns>();

  moments(grid: PitchGrid, h: Harmonics, terms: readonly MomentTerm[]): Float64Array {
    const { sines, cosines } = grid;
    const { out, of } = this.prepared(grid, 'moment', terms);
    for (let i = 0; i < out.length; i++) out[i] = momentAtTurn(h, sines[i], cosines[i]);
    return added(out, of);
  }

  slopes(grid: PitchGrid, h: Harmonics, terms: readonly MomentTerm[]): Float64Array {
    const { sines, cosines } = grid;
    const { out, of } = this.prepared(grid, 'slope', terms);
    for (let i = 0; i < out.length; i++) out[i] = slopeAtTurn(h, sines[i], cosines[i]);
    return added(out, of);
  }

  energies(grid: PitchGrid, h: Harmonics, terms: readonly MomentTerm[]): Float64Array {
    const { sines, cosines, halves } = grid;
    const { out, of } = this.prepared(grid, 'energy', terms);
    for (let i = 0; i < out.length; i++) out[i] = energyAtTurn(h, sines[i], cosines[i], halves[i]);
    return added(out, of);
  }

  /** The share of one term at every pitch of a grid, N m. Read only. */
  share(grid: PitchGrid, term: MomentTerm, terms: readonly MomentTerm[]): Float64Array | undefined {
    return this.prepared(grid, 'moment', terms).of[terms.indexOf(term)];
  }

  /** Friction that holds the grip at every pitch of a grid, N m. */
  frictions(
    grid: PitchGrid,
    friction: HeadFriction | null,
    links: LinkColumns | null,
  ): Float64Array {
    const held = this.of(grid);
    held.friction ??= new Float64Array(grid.pitches.length);
    if (friction) friction.fill(grid, links, held.friction);
    else held.friction.fill(0);
    return held.friction;
  }

  private prepared(grid: PitchGrid, kind: Kind, terms: readonly MomentTerm[]) {
    const { kinds } = this.of(grid);
    const held = kinds[kind] ?? { out: new Float64Array(grid.pitches.length), terms: [], of: [] };
    kinds[kind] = held;
    const before = held.terms;
    held.of = terms.map((term, k) => {
      const at = before[k] === term ? k : before.indexOf(term);
      return at < 0 ? this.work(grid, kind, term) : held.of[at];
    });
    held.terms = terms;
    return held;
  }

  private work(grid: PitchGrid, kind: Kind, term: MomentTerm): Float64Array {
    this.asked += grid.pitches.length;
    return grid.pitches.map((pitch) => term[kind](radians(pitch) as Radians));
  }

  private of(grid: PitchGrid): GridColumns {
    let found = this.columns.get(grid);
    if (!found) {
      found = { kinds: {}, friction: null };
      this.columns.set(grid, found);
    }
    return found;
  }
}

interface GridColumns {
  readonly kinds: { [K in Kind]?: KindColumns };
  friction: Float64Array | null;
}

interface KindColumns {
  readonly out: Float64Array;
  terms: readonly MomentTerm[];
  /** A column a term. */
  of: readonly Float64Array[];
}

/** In the order of the terms, as a sum of one pitch is made. */
function added(out: Float64Array, columns: readonly Float64Array[]): Float64Array {
  for (const column of columns) for (let i = 0; i < out.length; i++) out[i] += column[i];
  return out;
}
