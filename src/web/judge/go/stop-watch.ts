/** A watch that runs beside a video, so that a family can find the moment: "[1:23] ". */
import { computed, signal } from '@preact/signals';

/** "1:23", "1:02:03"; whole seconds. */
export function clockText(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (part: number) => String(part).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}

/** Seconds of "1:23", "83" or "1:02:03"; `undefined` where it is no time. */
export function clockSeconds(text: string): number | undefined {
  if (!/^\d{1,3}(:[0-5]?\d){0,2}$/.test(text.trim())) return undefined;
  return text
    .trim()
    .split(':')
    .reduce((seconds, part) => seconds * 60 + Number(part), 0);
}

export class StopWatch {
  readonly seconds = signal(0);
  readonly runs = signal(false);
  readonly text = computed(() => clockText(this.seconds.value));
  #timer: ReturnType<typeof setInterval> | undefined;
  #startedAt = 0;

  start(): void {
    if (this.runs.value) return;
    this.#startedAt = performance.now() - this.seconds.value * 1_000;
    this.runs.value = true;
    this.#timer = setInterval(() => this.#look(), 250);
  }

  stop(): void {
    if (this.runs.value) this.#look();
    clearInterval(this.#timer);
    this.runs.value = false;
  }

  set(seconds: number): void {
    const ran = this.runs.value;
    this.stop();
    this.seconds.value = seconds;
    if (ran) this.start();
  }

  #look(): void {
    this.seconds.value = Math.floor((performance.now() - this.#startedAt) / 1_000);
  }
}
