import { BufferAttribute, BufferGeometry, DoubleSide, Group, Mesh, MeshBasicMaterial } from 'three';
import { spreadEllipse } from '../../engine/mass/inertia';
import { t } from '../../messages';
import type { Palette } from '../drawing/palette';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { fillEllipse, type SpreadKind, spreadKind } from '../maths/ellipse';
import { boltStation } from '../maths/station';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

const POINTS = 72;

/** The spread ellipse at the bolt, turning with the grip: solid where it centres, dashed where it flees. */
export function createEllipseLayer(kit: StageKit): StageLayer {
  const group = new Group();
  kit.gripFrame.add(group);
  const outline = new Segments(kit.lines, 2, { overlay: true });
  const positions = new Float32Array(3 * (POINTS + 1));
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(fanTriangles(POINTS));
  const material = new MeshBasicMaterial({
    transparent: true,
    opacity: 0.14,
    depthWrite: false,
    side: DoubleSide,
    // Flat: both sides at once look the same, and cost one drawing.
    forceSinglePass: true,
  });
  const fill = new Mesh(geometry, material);
  fill.frustumCulled = false;
  fill.matrixAutoUpdate = false;
  fill.renderOrder = 3;
  group.add(fill, outline.object);
  const label = kit.labels.add('stage-label', 4);
  let palette: Palette | null = null;
  let kind: SpreadKind = 'round';
  let worn = '';

  function colour(): void {
    if (!palette) return;
    const token = kind === 'round' ? palette.holds : palette[kind];
    if (token === worn) return;
    worn = token;
    outline.paint(token);
    material.color.set(token);
    label.element.style.color = token;
  }

  return {
    update({ reading, state }, changes) {
      const ellipse = spreadEllipse(reading.totals);
      group.visible = state.settings.layers.ellipse && ellipse !== null;
      label.visible = group.visible;
      if (!group.visible || !ellipse) return;
      const station = boltStation(reading) * MM;
      if (changes.design || changes.settings) {
        fillEllipse(positions, POINTS, ellipse);
        geometry.attributes.position.needsUpdate = true;
        group.position.x = station;
        kind = spreadKind(ellipse, reading.totals);
        colour();
        fillOutline(outline, positions, kind === 'flees');
        label.text = t(`stage.spread.${kind}`);
      }
      placeLabel(kit, label, positions, station);
    },
    paint(next) {
      palette = next;
      colour();
    },
    dispose() {
      group.removeFromParent();
      outline.dispose();
      geometry.dispose();
      material.dispose();
      kit.labels.remove(label);
    },
  };
}

/** Triangles from the middle (the last point, left at zero) to every stretch of the rim. */
function fanTriangles(count: number): number[] {
  return Array.from({ length: count }, (_, i) => [count, i, (i + 1) % count]).flat();
}

function fillOutline(outline: Segments, positions: Float32Array, dashed: boolean): void {
  const room = outline.room(POINTS);
  let count = 0;
  for (let i = 0; i < POINTS; i++) {
    if (dashed && i % 4 === 3) continue;
    const next = (i + 1) % POINTS;
    for (let k = 0; k < 3; k++) {
      room[6 * count + k] = positions[3 * i + k];
      room[6 * count + 3 + k] = positions[3 * next + k];
    }
    count++;
  }
  outline.show(count);
}

/** Under the lowest point of the ellipse as the grip stands now. */
function placeLabel(
  kit: StageKit,
  label: ReturnType<StageKit['labels']['add']>,
  positions: Float32Array,
  station: number,
): void {
  const { rotation, translation } = kit.X_RG;
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < POINTS; i++) {
    const y = positions[3 * i + 1];
    const z = positions[3 * i + 2];
    const height = rotation[6] * station + rotation[7] * y + rotation[8] * z;
    if (height >= lowest) continue;
    lowest = height;
    label.at.set(
      rotation[0] * station + rotation[1] * y + rotation[2] * z + translation[0] * MM,
      rotation[3] * station + rotation[4] * y + rotation[5] * z + translation[1] * MM,
      height + translation[2] * MM,
    );
  }
  label.offset = [0, 14];
}
