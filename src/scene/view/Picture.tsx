import { createContext, type ReactNode, useContext, useEffect, useRef, useState } from 'react';
import { type FirstCamera, LivePicture } from './livePicture';
import './picture.css';

const PictureContext = createContext<LivePicture | null>(null);

/** The picture around. Throws outside one: a programmer's fault. */
export function usePicture(): LivePicture {
  const picture = useContext(PictureContext);
  if (!picture) throw new Error('usePicture(): there is no Picture above');
  return picture;
}

/**
 * A WebGL picture that fills its parent. Its children are there once it is; they render no elements, they put what they
 * draw into the picture's scene. `camera` counts when the picture is made.
 */
export function Picture(props: { readonly camera: FirstCamera; readonly children: ReactNode }) {
  const host = useRef<HTMLDivElement>(null);
  const first = useRef(props.camera);
  const [picture, setPicture] = useState<LivePicture | null>(null);
  useEffect(() => {
    if (!host.current) return;
    const made = new LivePicture(host.current, first.current);
    setPicture(made);
    return () => made.dispose();
  }, []);
  return (
    <div className="stage-picture" ref={host}>
      {picture && <PictureContext value={picture}>{props.children}</PictureContext>}
    </div>
  );
}
