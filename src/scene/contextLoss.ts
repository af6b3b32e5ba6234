import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';

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
