import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import { Vector4 } from 'three';

/** Has a canvas drawn again when its lost graphics context is given back; `onLost` hears of both. */
export function useContextLoss(onLost: (lost: boolean) => void): void {
  const gl = useThree((state) => state.gl);
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    const canvas = gl.domElement;
    function lost(event: Event): void {
      // Without this the browser never gives the context back.
      event.preventDefault();
      onLost(true);
    }
    function restored(): void {
      // The renderer has heard first, and keeps the viewport of the new context: the canvas' own, in whole pixels rounded
      // down, where its own is rounded to the nearest.
      gl.setViewport(gl.getViewport(new Vector4()));
      onLost(false);
      invalidate();
    }
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', restored);
    return () => {
      canvas.removeEventListener('webglcontextlost', lost);
      canvas.removeEventListener('webglcontextrestored', restored);
    };
  }, [gl, onLost, invalidate]);
}
