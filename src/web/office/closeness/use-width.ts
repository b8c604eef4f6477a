/** How wide a plot may be, so that it is drawn in real pixels and its words stay as large as all others. */
import { type MutableRef, useLayoutEffect, useRef, useState } from 'preact/hooks';

const widthToBeginWith = 340;

export function useWidth<Place extends HTMLElement>(): {
  readonly place: MutableRef<Place | null>;
  readonly width: number;
} {
  const place = useRef<Place>(null);
  const [width, setWidth] = useState(widthToBeginWith);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return;
    const measure = () => setWidth(Math.max(200, Math.floor(element.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { place, width };
}
