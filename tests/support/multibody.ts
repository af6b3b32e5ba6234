import loadMujoco from 'mujoco-js';
import type { TriangleMesh } from '../../src/engine/mass/solid';
import type { Piece } from './assembly';

/**
 * An independent multibody engine as oracle: MuJoCo (Apache-2.0; E. Todorov, T. Erez, Y. Tassa, IROS 2012), compiled
 * to WebAssembly. It knows nothing of feathering moments: a hub hinge about Z carries a grip hinge about the
 * feathering axis, gravity is off, the hub turns at W, and the generalised bias force of the grip hinge (Coriolis and
 * centrifugal, with which the joint must be held) is minus the inertial feathering moment.
 *
 * Where several geoms share a body, the oracle diagonalises their common inertia by Jacobi rotations and stops once
 * the cosine of the next one exceeds 1 - 1e-12, which leaves up to sqrt(2e-12) = 1.4e-6 rad of tilt in the
 * principal axes. A body of one primitive is not diagonalised. So moments are taken from pieces welded to
 * the grip as bodies of their own (rounding is all that is left), and the tensor of the lumped body, and meshes,
 * are held to the oracle's tilt.
 */
export const ORACLE_TILT = Math.sqrt(2e-12);

export interface Hub {
  readonly angularSpeed: number;
  readonly torqueOffset: number;
  readonly precone: number;
}

export interface MeshPiece {
  readonly mesh: TriangleMesh;
  readonly density: number;
}

export interface MassReport {
  readonly mass: number;
  readonly centre: readonly number[];
  /** Inertia tensor about the centre of mass, row-major, grip axes. */
  readonly inertia: readonly number[];
}

export interface MultibodyEngine {
  /** Inertial feathering moment of the welded pieces at each pitch, N m. */
  moments(
    pieces: readonly Piece[],
    hub: Hub,
    pitches: readonly number[],
    meshes?: readonly MeshPiece[],
  ): readonly number[];
  /**
   * Generalised forces (N, N m) that the spin puts on the joints of whatever hangs in the hub (bodies and joints as MJCF),
   * in the order of the joints, at joint positions `qpos`, everything at rest against the hub: minus the bias force.
   */
  spinForces(hubContent: string, angularSpeed: number, qpos: readonly number[]): readonly number[];
  /** All pieces lumped into one body. */
  lump(pieces: readonly Piece[]): MassReport;
}

const text = (values: ArrayLike<number>) => Array.from(values, (v) => v.toString()).join(' ');

function geom(piece: Piece): string {
  const { shape } = piece;
  const place = `pos="${text(piece.centre)}" quat="${text(piece.turn)}" density="${piece.density}"`;
  switch (shape.kind) {
    case 'box':
      return `<geom type="box" size="${text(shape.size.map((s) => s / 2))}" ${place}/>`;
    case 'sphere':
      return `<geom type="sphere" size="${shape.radius}" ${place}/>`;
    default:
      return `<geom type="${shape.kind}" size="${shape.radius} ${shape.height / 2}" ${place}/>`;
  }
}

function meshAsset(mesh: TriangleMesh, index: number): string {
  const at = `vertex="${text(mesh.positions)}" face="${text(mesh.triangles)}"`;
  return `<mesh name="mesh${index}" inertia="exact" ${at}/>`;
}

function describe(hub: Hub, gripContent: string, assets: string): string {
  // Turned about -Y by the precone: the hinge axis (1, 0, 0) of the grip body tilts toward +Z.
  const half = -hub.precone / 2;
  const turn = `${Math.cos(half)} 0 ${Math.sin(half)} 0`;
  return `<mujoco><compiler angle="radian" inertiafromgeom="true" autolimits="false"/>
    <option gravity="0 0 0"/><asset>${assets}</asset>
    <worldbody><body name="hub"><joint type="hinge" axis="0 0 1"/>
    <geom type="sphere" size="0.01" density="1000"/>
    <body name="grip" pos="0 ${hub.torqueOffset} 0" quat="${turn}">
    <joint type="hinge" axis="1 0 0"/>${gripContent}</body></body></worldbody></mujoco>`;
}

export async function startMultibodyEngine(): Promise<MultibodyEngine> {
  const engine = await loadMujoco();
  // The package's types leave out the in-memory file system that its own README uses.
  const files = (engine as unknown as { FS: { writeFile(path: string, body: string): void } }).FS;
  function load(xml: string) {
    files.writeFile('/grip.xml', xml);
    return engine.MjModel.loadFromXML('/grip.xml');
  }
  return {
    moments(pieces, hub, pitches, meshes = []) {
      const bodies = [
        ...pieces.map((piece) => `<body>${geom(piece)}</body>`),
        ...meshes.map(
          (m, i) => `<body><geom type="mesh" mesh="mesh${i}" density="${m.density}"/></body>`,
        ),
      ];
      const assets = meshes.map((m, i) => meshAsset(m.mesh, i)).join('');
      const model = load(describe(hub, bodies.join(''), assets));
      const data = new engine.MjData(model);
      try {
        return pitches.map((pitch) => {
          data.qvel[0] = hub.angularSpeed;
          data.qvel[1] = 0;
          data.qpos[0] = 0;
          data.qpos[1] = pitch;
          engine.mj_forward(model, data);
          return -data.qfrc_bias[1];
        });
      } finally {
        data.delete();
        model.delete();
      }
    },
    spinForces(hubContent, angularSpeed, qpos) {
      const model =
        load(`<mujoco><compiler angle="radian" inertiafromgeom="true" autolimits="false"/>
        <option gravity="0 0 0"/><worldbody><body name="hub"><joint type="hinge" axis="0 0 1"/>
        <geom type="sphere" size="0.01" density="1000"/>${hubContent}</body></worldbody></mujoco>`);
      const data = new engine.MjData(model);
      try {
        data.qvel[0] = angularSpeed;
        for (let i = 0; i < qpos.length; i++) data.qpos[i + 1] = qpos[i];
        engine.mj_forward(model, data);
        return qpos.map((_, i) => -data.qfrc_bias[i + 1]);
      } finally {
        data.delete();
        model.delete();
      }
    },
    lump(pieces) {
      const still = { angularSpeed: 0, torqueOffset: 0, precone: 0 };
      const model = load(describe(still, pieces.map(geom).join(''), ''));
      try {
        // The grip is body 2: world, hub, grip.
        return {
          mass: model.body_mass[2],
          centre: Array.from({ length: 3 }, (_, i) => model.body_ipos[6 + i]),
          inertia: turned(
            Array.from({ length: 3 }, (_, i) => model.body_inertia[6 + i]),
            Array.from({ length: 4 }, (_, i) => model.body_iquat[8 + i]),
          ),
        };
      } finally {
        model.delete();
      }
    },
  };
}

/** R diag(d) R^T for a unit quaternion. */
function turned(d: readonly number[], [w, x, y, z]: readonly number[]): readonly number[] {
  const columns = [
    [1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)],
    [2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)],
    [2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)],
  ];
  const out: number[] = [];
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      out.push(columns.reduce((sum, column, k) => sum + d[k] * column[i] * column[j], 0));
    }
  }
  return out;
}
