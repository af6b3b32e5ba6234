import { BufferAttribute, BufferGeometry, DoubleSide, Mesh, MeshBasicMaterial } from 'three';
import { t } from '../../messages';
import { Segments } from '../drawing/segments';
import { arcPoints, dashPattern, dashPolyline, type Point } from '../maths/dashes';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Half the angle of the sector of the disc that is drawn, degrees. */
const SECTOR = 24;
const STEPS = 24;

/** The plane of rotation: a faint sector of the disc as far as the tip, with a dashed rim. */
export function createPlaneLayer(kit: StageKit): StageLayer {
  const geometry = new BufferGeometry();
  const positions = new Float32Array(3 * (STEPS + 2));
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(Array.from({ length: STEPS }, (_, i) => [0, i + 1, i + 2]).flat());
  const material = new MeshBasicMaterial({
    transparent: true,
    opacity: 0.07,
    depthWrite: false,
    side: DoubleSide,
    // Flat: both sides at once look the same, and cost one drawing.
    forceSinglePass: true,
  });
  const sector = new Mesh(geometry, material);
  sector.frustumCulled = false;
  sector.matrixAutoUpdate = false;
  sector.renderOrder = -1;
  const rim = new Segments(kit.lines, 1, { opacity: 0.7 });
  kit.root.add(sector, rim.object);
  const label = kit.labels.add('stage-label stage-label-quiet', 1);
  label.text = t('stage.plane');
  let drawn = 0;

  function draw(radius: number): void {
    drawn = radius;
    const arc = arcPoints(radius, -SECTOR, SECTOR, (c, s): Point => [c, s, 0], STEPS);
    arc.forEach((point, i) => positions.set(point, 3 * (i + 1)));
    geometry.attributes.position.needsUpdate = true;
    const strokes: number[] = [];
    dashPolyline(strokes, [[0, 0, 0], ...arc, [0, 0, 0]], dashPattern(radius / 50));
    rim.set(strokes);
    label.put(arc[0]);
    label.offset = [0, -10];
  }

  return {
    update({ state }) {
      const visible = state.settings.layers.plane;
      sector.visible = visible;
      rim.object.visible = visible;
      label.visible = visible;
      const radius = kit.extent.outboard * 1.04;
      if (visible && radius !== drawn) draw(radius);
    },
    paint(palette) {
      material.color.set(palette.ink);
      rim.paint(palette.lineStrong);
    },
    dispose() {
      sector.removeFromParent();
      rim.object.removeFromParent();
      geometry.dispose();
      material.dispose();
      rim.dispose();
      kit.labels.remove(label);
    },
  };
}
