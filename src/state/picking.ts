import type { FreePose, Part } from '../design/design';
import {
  type PickedPlace,
  type PickFault,
  type Picks,
  placeByPicks,
  type RimPicks,
} from '../design/placeByPicks';
import { freePoseOf } from '../design/placement';
import { type PartValues, sameValues } from '../design/values';
import type { Vec3 } from '../engine/math/vector';
import { fail, type Result } from '../engine/result';
import { mmFromMetres } from '../engine/units';
import { partType } from '../parts/registry';
import type { Live } from './live';
import type { PartActions } from './partActions';
import type { Refusal } from './refusal';
import type { AppStore } from './store';

/** Rims are picked in this order; either may be passed over. */
export type Rim = 'bore' | 'bolt';
export const RIM_POINTS = 3;

/** Placing a part by holes picked on it, while that is under way. Points are in the part's frame, metres. */
export interface Picking {
  readonly part: string;
  readonly rim: Rim;
  readonly bore: readonly Vec3[];
  readonly bolt: readonly Vec3[];
  readonly stationMm: number;
}

export interface PickingActions {
  /** Begins to pick on a part that is there. */
  begin(id: string): void;
  /** Takes a point of the rim asked for; after the third the next rim is asked for. */
  point(p_P: Vec3): void;
  /** Takes the last point back. */
  back(): void;
  /** Asks for this rim. */
  ask(rim: Rim): void;
  setStation(stationMm: number): void;
  /** Where the picks so far would put the part. */
  preview(): Result<PickedPlace, PickFault> | null;
  /** Puts the part there, in one undo step, and ends. */
  apply(): Result<Part, Refusal>;
  stop(): void;
}

export function createPicking(
  store: AppStore,
  live: Live,
  actions: Pick<PartActions, 'placePart'>,
): PickingActions {
  const get = () => store.getState().picking;
  const set = (picking: Picking | null) => store.setState({ picking });

  function preview(): Result<PickedPlace, PickFault> | null {
    const picking = get();
    const placed = picking && live.model.placed(picking.part);
    return picking && placed ? placeByPicks(picksOf(picking), placed.pose) : null;
  }

  // Points lie on the part as it was: where its shape changes, they are let go.
  let shape: PartValues | null = null;
  store.subscribe((state, before) => {
    const { picking } = state;
    if (!picking || !shape || state.design === before.design) return;
    const placed = live.model.placed(picking.part);
    if (!placed || sameValues(partType(placed.part.kind), placed.values, shape)) return;
    shape = placed.values;
    if (picking.bore.length + picking.bolt.length > 0) {
      set({ ...picking, rim: 'bore', bore: [], bolt: [] });
    }
  });

  return {
    begin(id) {
      const placed = live.model.placed(id);
      if (!placed) return;
      shape = placed.values;
      set({ part: id, rim: 'bore', bore: [], bolt: [], stationMm: boltStationMm(live, id) });
    },
    point(p_P) {
      const picking = get();
      if (!picking) return;
      const points = picking[picking.rim];
      if (points.length >= RIM_POINTS) return;
      const next = [...points, p_P];
      const done = next.length === RIM_POINTS && picking.rim === 'bore';
      set({ ...picking, [picking.rim]: next, rim: done ? 'bolt' : picking.rim });
    },
    back() {
      const picking = get();
      if (!picking) return;
      const rim: Rim = picking.rim === 'bolt' && picking.bolt.length === 0 ? 'bore' : picking.rim;
      set({ ...picking, rim, [rim]: picking[rim].slice(0, -1) });
    },
    ask(rim) {
      const picking = get();
      if (picking) set({ ...picking, rim });
    },
    setStation(stationMm) {
      const picking = get();
      if (picking) set({ ...picking, stationMm });
    },
    preview,
    apply() {
      const picking = get();
      const found = preview();
      if (!picking || !found?.ok) return fail({ field: 'positionMm', rule: 'notAllowed' });
      const outcome = actions.placePart(picking.part, {
        pose: rounded(freePoseOf(found.value.pose)),
      });
      if (outcome.ok) set(null);
      return outcome;
    },
    stop: () => set(null),
  };
}

/** A picture is drawn in single precision: more digits than these were not picked. */
function rounded({ positionMm, rotationDeg }: FreePose): FreePose {
  const tidy = (value: number) => Math.round(value * 1e4) / 1e4 + 0;
  const all = ([a, b, c]: FreePose['positionMm']) => [tidy(a), tidy(b), tidy(c)] as const;
  return { positionMm: all(positionMm), rotationDeg: all(rotationDeg) };
}

function picksOf({ bore, bolt, stationMm }: Picking): Picks {
  return { bore: whole(bore), bolt: whole(bolt), stationMm };
}

function whole(points: readonly Vec3[]): RimPicks | null {
  return points.length === RIM_POINTS ? (points as unknown as RimPicks) : null;
}

/** The station of a blade bolt that is there already, else where the part's own origin is; to a hundredth of a mm. */
function boltStationMm(live: Live, id: string): number {
  const bolt = live.model.parts.find(
    ({ part, sockets }) => part.id !== id && sockets.some((socket) => socket.mates === 'thread'),
  );
  const station = (bolt ?? live.model.placed(id))?.pose.translation[0] ?? 0;
  return Math.round(mmFromMetres(station) * 100) / 100;
}
