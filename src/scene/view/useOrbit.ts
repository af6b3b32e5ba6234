import { useEffect, useRef } from 'react';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { usePicture } from './Picture';

/** What the pointer may do to the camera beside turning it. */
interface OrbitChoice {
  readonly zoom: boolean;
  readonly pan: boolean;
  /** Handed the control when it is there, and null when it goes. */
  attach?(control: OrbitControls | null): void;
  /** A person takes hold of the camera. */
  onStart?(): void;
}

/** The pointer turns the camera about its target, pans and zooms. The choices count when the picture is made. */
export function useOrbit(choice: OrbitChoice): void {
  const picture = usePicture();
  const first = useRef(choice);
  useEffect(() => {
    const { zoom, pan, attach, onStart } = first.current;
    const control = new OrbitControls(picture.camera, picture.renderer.domElement);
    control.enableZoom = zoom;
    control.enablePan = pan;
    control.addEventListener('change', picture.invalidate);
    if (onStart) control.addEventListener('start', onStart);
    attach?.(control);
    return () => {
      attach?.(null);
      control.dispose();
    };
  }, [picture]);
}
