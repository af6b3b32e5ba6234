import { Color, PerspectiveCamera, Scene, WebGLRenderer } from 'three';

/** Of the camera that a picture begins with: world units, degrees; up is Z. */
export interface FirstCamera {
  readonly fovDeg: number;
  readonly position: readonly [number, number, number];
  readonly near: number;
  readonly far: number;
}

/** Screens with more pixels than this to one of the page are drawn at this: the eye sees no more, the machine pays. */
const FINEST = 2;

/**
 * Renderer, scene and camera in a canvas that fills an element and follows its size. Draws when it is asked to, at most
 * once a frame, and never on its own. Throws where the browser gives no WebGL.
 */
export class LivePicture {
  readonly scene = new Scene();
  readonly camera: PerspectiveCamera;
  readonly renderer: WebGLRenderer;
  /** Size of the picture, px of the page. */
  width = 0;
  height = 0;
  /** Done before each drawn frame. */
  readonly beforeFrame = new Set<() => void>();
  /** Told when the element has changed its size. */
  readonly resized = new Set<() => void>();

  private readonly observer: ResizeObserver;
  private asked = 0;

  constructor(
    private readonly host: HTMLElement,
    first: FirstCamera,
  ) {
    this.renderer = new WebGLRenderer({
      alpha: true,
      antialias: true,
      powerPreference: 'high-performance',
    });
    this.camera = new PerspectiveCamera(first.fovDeg, 1, first.near, first.far);
    this.camera.up.set(0, 0, 1);
    this.camera.position.set(...first.position);
    this.camera.lookAt(0, 0, 0);
    host.append(this.renderer.domElement);
    this.fit();
    this.observer = new ResizeObserver(() => this.fit());
    this.observer.observe(host);
  }

  /** Asks for a frame; however often, one is drawn. */
  readonly invalidate = (): void => {
    if (this.asked === 0) this.asked = requestAnimationFrame(this.draw);
  };

  /** Colour behind all else. */
  backWith(colour: string): void {
    this.scene.background = new Color(colour);
  }

  dispose(): void {
    cancelAnimationFrame(this.asked);
    // From now on nobody's call draws.
    this.asked = -1;
    this.observer.disconnect();
    this.renderer.dispose();
    this.renderer.forceContextLoss();
    this.renderer.domElement.remove();
  }

  private readonly draw = (): void => {
    this.asked = 0;
    for (const task of this.beforeFrame) task();
    this.renderer.render(this.scene, this.camera);
  };

  private fit(): void {
    const { clientWidth, clientHeight } = this.host;
    const ratio = Math.min(FINEST, Math.max(1, window.devicePixelRatio));
    const same = clientWidth === this.width && clientHeight === this.height;
    if (same && ratio === this.renderer.getPixelRatio()) return;
    this.width = clientWidth;
    this.height = clientHeight;
    this.renderer.setPixelRatio(ratio);
    this.renderer.setSize(clientWidth, clientHeight);
    this.camera.aspect = clientWidth / Math.max(1, clientHeight);
    this.camera.updateProjectionMatrix();
    for (const told of this.resized) told();
    this.invalidate();
  }
}
