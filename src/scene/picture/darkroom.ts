import { Color, type PerspectiveCamera, type Scene, WebGLRenderer } from 'three';
import type { StagePicture } from '../../state/stageCamera';
import { lightPalette, type Palette } from '../drawing/palette';
import { pictureView } from '../maths/pictureView';
import type { StageKit } from '../stageKit';
import type { ViewControl } from '../view/viewControl';
import { paintLabels } from './pictureLabels';

/** What is looked at, and by what colours it is painted now. */
export interface Sitting {
  readonly scene: Scene;
  readonly camera: PerspectiveCamera;
  /** Width by height of the stage. */
  readonly aspect: number;
  readonly view: ViewControl;
  readonly palette: Palette;
}

/**
 * Takes pictures of the stage's scene with a renderer and a canvas of its own, so that the visible one is never touched.
 * Always in the colours of the light page on white; handles, picked points and what marks the selection are left out.
 */
export class Darkroom {
  private renderer: WebGLRenderer | null = null;

  constructor(private readonly kit: StageKit) {}

  /** Null where the browser draws no picture of that size. The stage is the same afterwards. */
  take(sitting: Sitting, width: number, height: number): StagePicture | null {
    const restore = [dress(this.kit), paintLight(this.kit, sitting)];
    try {
      return this.expose(sitting, width, height);
    } catch {
      return null;
    } finally {
      for (const undo of restore) undo();
    }
  }

  dispose(): void {
    this.renderer?.dispose();
    this.renderer?.forceContextLoss();
    this.renderer = null;
  }

  private expose(sitting: Sitting, width: number, height: number): StagePicture | null {
    const { scene, camera, aspect } = sitting;
    const view = pictureView(camera.fov, aspect, width, height);
    const eye = placedEye(sitting, view.fovDeg, width / height);
    // A browser that has too many contexts takes the oldest away.
    if (this.renderer?.getContext().isContextLost()) this.dispose();
    this.renderer ??= new WebGLRenderer({ antialias: true, preserveDrawingBuffer: true });
    const { renderer } = this;
    // A hair more, for the size in whole pixels is rounded down.
    const grain = 1e-6 / view.pixelRatio;
    renderer.setDrawingBufferSize(view.cssWidth + grain, view.cssHeight + grain, view.pixelRatio);
    const gl = renderer.getContext();
    if (gl.drawingBufferWidth !== width || gl.drawingBufferHeight !== height) return null;
    renderer.render(scene, eye);
    const sheet = document.createElement('canvas');
    sheet.width = width;
    sheet.height = height;
    const context = sheet.getContext('2d');
    if (!context) return null;
    context.drawImage(renderer.domElement, 0, 0);
    context.scale(view.pixelRatio, view.pixelRatio);
    const labels = this.kit.labels.arranged(eye, view.cssWidth, view.cssHeight);
    const font = getComputedStyle(this.kit.labels.element).fontFamily;
    paintLabels(context, labels, lightPalette(), font);
    // The drawing buffer of a large picture is not kept.
    renderer.setDrawingBufferSize(1, 1, 1);
    return { dataUrl: sheet.toDataURL('image/png'), width, height };
  }
}

/**
 * A named view is fitted to the picture as it would be to a stage of that shape; one that a person has turned or zoomed
 * stays where it is, with its field widened until nothing of it is lost.
 */
function placedEye(
  { camera, view }: Sitting,
  widenedDeg: number,
  aspect: number,
): PerspectiveCamera {
  const eye = camera.clone();
  eye.aspect = aspect;
  if (view.moved) eye.fov = widenedDeg;
  else {
    const { target, position } = view.fitted(camera, aspect);
    eye.position.copy(position);
    eye.lookAt(target);
    // A picture of another shape may be taken from farther away.
    eye.far *= 1 + position.length() / camera.position.length();
  }
  eye.updateProjectionMatrix();
  eye.updateMatrixWorld();
  return eye;
}

/** Hides what helps the hand and puts picture clothes on the parts; returns what undoes it. */
function dress({ aids, bodies, crowds }: StageKit): () => void {
  const shown = [...aids].filter((aid) => aid.visible);
  for (const aid of shown) aid.visible = false;
  // Each in its own clothes; the next drawn frame of the stage puts them together again.
  crowds.scatter(bodies.values());
  const undress = [...bodies.values()].map((body) => body.dressForPicture());
  return () => {
    for (const aid of shown) aid.visible = true;
    for (const undo of undress) undo();
  };
}

function paintLight(kit: StageKit, { scene, palette }: Sitting): () => void {
  const { background } = scene;
  const light = lightPalette();
  scene.background = new Color('#ffffff');
  kit.paintAll(light);
  return () => {
    scene.background = background;
    kit.paintAll(palette);
  };
}
