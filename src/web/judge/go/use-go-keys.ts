/** The keyboard acts on the go in hand. */
import type { Signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { neighbor } from '../entries.ts';
import { goKey, isElsewhere } from './go-keys.ts';
import type { GoModel } from './go-model.ts';
import type { OpenParts } from './open-parts.ts';
import type { StopWatch } from './stop-watch.ts';

interface KeysOf {
  readonly model: GoModel;
  readonly line: Signal<string>;
  readonly open: OpenParts;
  readonly watch: StopWatch | undefined;
}

export function useGoKeys({ model, line, open, watch }: KeysOf): void {
  const [, go] = useLocation();
  useEffect(() => {
    // The first key of a line shows its field; until that has the focus, what a quick hand types belongs to it.
    let begins = false;
    const goOnWithLine = ({ key }: KeyboardEvent) => {
      if (key === 'Enter') document.querySelector<HTMLFormElement>('form.shorthand')?.requestSubmit();
      else if (key.length === 1) line.value += key;
    };
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || isElsewhere(event)) return;
      if (begins && line.value !== '') {
        event.preventDefault();
        return goOnWithLine(event);
      }
      const key = goKey(event);
      if (key === undefined) return;
      event.preventDefault();
      if (key.does === 'line') {
        begins = true;
        line.value += key.begins;
        open.line.value = true;
      } else act(key.does);
    };
    const arrived = ({ target }: FocusEvent) => {
      if (target instanceof HTMLElement && target.id === 'shorthand') begins = false;
    };
    const turn = (by: -1 | 1) => {
      const { dayClass, entry } = model;
      const other = neighbor(dayClass, entry.classEntryId, by);
      const { classId } = dayClass;
      go(other === undefined ? `/classes/${classId}` : `/classes/${classId}/goes/${other.classEntryId}`);
    };
    const act = (does: Exclude<NonNullable<ReturnType<typeof goKey>>['does'], 'line'>) => {
      const step = model.step;
      switch (does) {
        case 'back':
          return model.take(model.inHand.value - 1);
        case 'on':
          return model.take(model.inHand.value + 1);
        case 'next-go':
          return turn(1);
        case 'previous-go':
          return turn(-1);
        case 'not-seen':
          return void (step?.kind === 'maneuver' && model.notSeen(step));
        case 'undo':
          return void model.undo();
        case 'unmark':
          return void (step !== undefined && model.unmark(step));
        case 'watch':
          return watch?.runs.value === true ? watch.stop() : watch?.start();
        case 'remark':
        case 'ruling':
        case 'keys':
          open[does].value = true;
      }
    };
    addEventListener('keydown', press);
    addEventListener('focusin', arrived);
    return () => {
      removeEventListener('keydown', press);
      removeEventListener('focusin', arrived);
    };
  }, [model, line, watch, go]);
}
