/** Which sheet is on the screen: they take turns, stop when they are told to, and give way to what was just posted. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Slide } from './slides.ts';

/** Long enough to read eight lines from afar. */
export const secondsOnSlide = 12;

export interface Rotation {
  /** `undefined`: without a script, or not yet: all of them are shown. */
  readonly at: number | undefined;
  readonly seconds: number;
  readonly isPaused: boolean;
  readonly step: (by: 1 | -1) => void;
  readonly pause: () => void;
}

interface Turn {
  readonly key: string;
  readonly seconds: number;
}

/** `latest`: what was posted last, by class and version; a new one comes onto the screen at once. */
export function useRotation(slides: readonly Slide[], latest: string | undefined): Rotation {
  const [turn, setTurn] = useState<Turn>();
  const [isPaused, setPaused] = useState(false);
  const shown = useRef(slides);
  shown.current = slides;
  useEffect(() => setTurn(turnTo(slides, 0)), []);
  useEffect(() => {
    if (isPaused) return undefined;
    const timer = setInterval(() => setTurn((now) => onward(shown.current, now)), 1_000);
    return () => clearInterval(timer);
  }, [isPaused]);
  const before = useRef(latest);
  useEffect(() => {
    if (latest !== before.current && latest !== undefined && !isPaused) {
      setTurn(turnTo(slides, firstOf(slides, latest)));
    }
    before.current = latest;
  }, [latest]);
  const at = turn === undefined ? undefined : placeOf(slides, turn.key);
  return {
    ...{ at, isPaused, seconds: turn?.seconds ?? 0 },
    // From the turn of this moment: keys may come faster than the page is drawn.
    step: (by) => setTurn((now) => now && turnTo(shown.current, placeOf(shown.current, now.key) + by)),
    pause: () => setPaused(!isPaused),
  };
}

/** Sheets come and go while one is shown; where it is gone they begin again. */
const placeOf = (slides: readonly Slide[], key: string): number =>
  Math.max(
    0,
    slides.findIndex((slide) => slide.key === key),
  );

function turnTo(slides: readonly Slide[], at: number): Turn {
  const around = (at + slides.length) % slides.length;
  return { key: slides[around]?.key ?? '', seconds: 0 };
}

function onward(slides: readonly Slide[], turn: Turn | undefined): Turn {
  if (turn === undefined) return turnTo(slides, 0);
  if (turn.seconds + 1 < secondsOnSlide) return { ...turn, seconds: turn.seconds + 1 };
  return turnTo(slides, placeOf(slides, turn.key) + 1);
}

const firstOf = (slides: readonly Slide[], latest: string): number =>
  Math.max(
    0,
    slides.findIndex((slide) => slide.kind === 'posted' && latest.startsWith(slide.of.id)),
  );
