import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element in pixels, kept up to date; 0 before it is known. */
export function useWidth<T extends HTMLElement>(): readonly [RefObject<T | null>, number] {
  const host = useRef<T>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    setWidth(element.clientWidth);
    return () => observer.disconnect();
  }, []);
  return [host, width];
}
