/** A sheet of paper over the page, with its title and a way to put it away. Escape puts it away too. */
import { type Signal, useSignalEffect } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { useWords } from '../shared/words.tsx';

interface DialogProps {
  readonly open: Signal<boolean>;
  readonly title: string;
  readonly children: ComponentChildren;
  /** How it is put away; left out: "Close". */
  readonly close?: string;
}

export function Dialog({ open, title, children, close }: DialogProps) {
  const { t } = useWords();
  const place = useRef<HTMLDialogElement>(null);
  const id = useId();
  useSignalEffect(() => {
    if (open.value) place.current?.showModal();
    else place.current?.close();
  });
  return (
    <dialog
      ref={place}
      class="over"
      aria-labelledby={id}
      onClose={() => {
        open.value = false;
      }}
    >
      <h2 id={id}>{title}</h2>
      {open.value ? children : null}
      <button type="button" onClick={() => (open.value = false)}>
        {close ?? t('judge-close')}
      </button>
    </dialog>
  );
}
