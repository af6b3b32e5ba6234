import { OrbitControls } from '@react-three/drei';
import { Canvas, useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect } from 'react';
import { type PerspectiveCamera, Vector3 } from 'three';
import { useSession } from '../ui/session';
import { useLive } from '../ui/useLive';
import { useContextLoss } from './contextLoss';
import { usePalette } from './drawing/palette';
import { MM } from './drawing/place';
import { createHandleLayer } from './handles/handleLayer';
import { attachPointer } from './handles/pointerControl';
import { pixelOf } from './handles/projection';
import type { Readout } from './handles/readout';
import { createBearingLayer } from './layers/bearingLayer';
import { createCentreLayer, createPrincipalLayer } from './layers/centreLayer';
import { createClearanceLayer } from './layers/clearanceLayer';
import { createEllipseLayer } from './layers/ellipseLayer';
import { createFanLayer } from './layers/fanLayer';
import { createFrameLayer } from './layers/frameLayer';
import { createGhostLayer } from './layers/ghostLayer';
import { LayerMount } from './layers/LayerMount';
import { createLimitLayer } from './layers/limitLayer';
import { createPlaneLayer } from './layers/planeLayer';
import { createPullLayer } from './layers/pullLayer';
import { createPullsShowLayer } from './layers/pullsShowLayer';
import { createSliderLayer } from './layers/sliderLayer';
import { boltStation } from './maths/station';
import { PartBodies } from './parts/PartBodies';
import { createPickLayer } from './picking/pickLayer';
import { openProbe } from './probe';
import { StagePhotographer } from './StagePhotographer';
import { useStageKit } from './stageKit';
import { quietThree } from './threeConsole';
import { attachTurning } from './view/turnView';
import type { OrbitLike, ViewControl } from './view/viewControl';

quietThree();

interface CanvasProps {
  readonly host: RefObject<HTMLDivElement | null>;
  readonly view: ViewControl;
  readonly readout: Readout;
  onLost(lost: boolean): void;
}

/** The canvas and all that is drawn in it. Frames are drawn on demand only. */
export function StageCanvas(props: CanvasProps) {
  const kit = useStageKit();
  const palette = usePalette();
  return (
    <Canvas
      frameloop="demand"
      flat
      dpr={[1, 2]}
      gl={{ antialias: true, powerPreference: 'high-performance' }}
      camera={{ up: [0, 0, 1], fov: 26, position: [200, -200, 150], near: 1, far: 2000 }}
    >
      <color attach="background" args={[palette.surface]} />
      <Painter />
      <primitive object={kit.root} />
      <primitive object={kit.lines} />
      <FrameTurner />
      <PartBodies />
      <Measure view={props.view} />
      <LayerMount make={createPlaneLayer} />
      <LayerMount make={createFrameLayer} />
      <LayerMount make={createGhostLayer} />
      <LayerMount make={createEllipseLayer} />
      <LayerMount make={createPrincipalLayer} />
      <LayerMount make={createPullLayer} />
      <LayerMount make={createPullsShowLayer} />
      <LayerMount make={createFanLayer} turn="fan" />
      <LayerMount make={createCentreLayer} />
      <LayerMount make={createSliderLayer} />
      <LayerMount make={createLimitLayer} />
      <LayerMount make={createBearingLayer} />
      <LayerMount make={createClearanceLayer} />
      <LayerMount make={createPickLayer} />
      {/* After the layers: the pitch knob stands at the end of the fan's pointer. */}
      <LayerMount make={createHandleLayer} turn="each" />
      <Eye {...props} />
      <StagePhotographer view={props.view} />
    </Canvas>
  );
}

/** Colours of the parts, from the page's. */
function Painter() {
  const kit = useStageKit();
  const palette = usePalette();
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    kit.paint(palette);
    invalidate();
  }, [kit, palette, invalidate]);
  return null;
}

/** Turns the frames to the pitch pointer before anything else is drawn. */
function FrameTurner() {
  const kit = useStageKit();
  const { store } = useSession();
  useLive((reading, changes) => {
    if (changes.pitch || changes.design) {
      const { pitchDeg } = store.getState();
      kit.turn(reading.rotor, pitchDeg, reading.linkage?.rodAxisAt(pitchDeg) ?? null);
    }
  });
  return null;
}

/** After the bodies are shaped and before the layers are drawn round them. */
function Measure({ view }: { readonly view: ViewControl }) {
  const kit = useStageKit();
  const { store, live } = useSession();
  useEffect(
    () =>
      store.subscribe((state, before) => {
        if (state.gesture || !before.gesture) return;
        live.flush();
        kit.relax();
      }),
    [store, live, kit],
  );
  useLive((reading, changes) => {
    if (!changes.design) return;
    const { gesture } = store.getState();
    kit.measure(gesture);
    // Before fan and handles, which are told in turns of their own: knob and pointer stand at one station.
    kit.standAt(boltStation(reading) * MM);
    if (changes.parts === 'all' && !gesture) view.refit();
  });
  return null;
}

/** The camera, its control, the pointer and what is done before each frame. */
function Eye({ host, view, readout, onLost }: CanvasProps) {
  const kit = useStageKit();
  const session = useSession();
  const gl = useThree((state) => state.gl);
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const size = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);

  useEffect(() => {
    const element = host.current;
    if (!element) return;
    const eye = { camera, renderer: gl, host: element, invalidate };
    kit.setEye(eye);
    const scratch = new Vector3();
    const closeProbe = openProbe(kit, (point) =>
      pixelOf(camera, scratch.set(...point), element.clientWidth, element.clientHeight),
    );
    const detach = attachPointer(session, kit, { eye, view, readout });
    const refit = () => view.refit();
    kit.refits.add(refit);
    view.show(view.view);
    const stopTurning = attachTurning(kit, view, session.pullsShow);
    return () => {
      kit.refits.delete(refit);
      detach();
      closeProbe();
      stopTurning();
      kit.setEye(null);
    };
  }, [kit, session, gl, camera, invalidate, host, view, readout]);

  useContextLoss(onLost);

  useEffect(() => {
    if (size.width > 0 && size.height > 0) view.refit();
  }, [view, size]);

  useFrame(() => {
    const { eye } = kit;
    if (!eye) return;
    view.setDepth(eye);
    camera.updateMatrixWorld();
    kit.crowds.take(kit.bodies.values());
    for (const task of kit.frameTasks) task(eye, size.width, size.height);
    kit.labels.place(camera, size.width, size.height, kit.handles.boxes());
  });

  return (
    <OrbitControls
      makeDefault
      enableDamping={false}
      ref={(control: unknown) => view.attach(control as OrbitLike | null)}
      onStart={() => view.noteMoved()}
    />
  );
}
