import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { dashPattern, dashPolyline, SOLID } from '../maths/dashes';
import { type GhostChord, ghostChords } from '../maths/ghosts';
import type { StageKit } from '../stageKit';
import { MarkPool } from './markPool';
import type { StageLayer } from './stageLayer';

/** The chord plane at every rest angle (solid outline, filled mark) and flee angle (dashed outline, hollow mark). */
export function createGhostLayer(kit: StageKit): StageLayer {
  const rest = new Segments(kit.lines, 1.5, { opacity: 0.55 });
  const flee = new Segments(kit.lines, 1.5, { opacity: 0.55 });
  kit.axisFrame.add(rest.object, flee.object);
  const marks = new MarkPool(kit.labels);

  function draw(ghosts: readonly GhostChord[], torqueOffset: number, tilt: number): void {
    const solid: number[] = [];
    const dashed: number[] = [];
    marks.begin();
    for (const { corners, kind, pitchDeg } of ghosts) {
      const outline = [...corners, corners[0]];
      if (kind === 'stable') dashPolyline(solid, outline, SOLID);
      else dashPolyline(dashed, outline, dashPattern(2));
      const [x, y, z] = corners[1];
      const c = Math.cos(tilt);
      const s = Math.sin(tilt);
      marks.add(kind, pitchDeg, [x * c - z * s, y + torqueOffset * MM, x * s + z * c], null);
    }
    marks.end();
    rest.set(solid);
    flee.set(dashed);
  }

  return {
    update({ reading, state }, changes) {
      const visible = state.settings.layers.ghosts;
      rest.object.visible = visible;
      flee.object.visible = visible;
      if (!visible) marks.hide();
      if (!visible || !(changes.design || changes.settings)) return;
      const { rotor } = reading;
      draw(ghostChords(reading.equilibria, kit.extent.chord), rotor.torqueOffset, rotor.precone);
    },
    paint(palette) {
      rest.paint(palette.ink);
      flee.paint(palette.ink);
    },
    dispose() {
      rest.object.removeFromParent();
      flee.object.removeFromParent();
      rest.dispose();
      flee.dispose();
      marks.dispose();
    },
  };
}
