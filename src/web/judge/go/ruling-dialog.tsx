/** Rulings that the sheet knows, each with what it does on this sheet. */
import { type Signal, useSignal } from '@preact/signals';
import { exact } from '../../../engine/numbers/exact.ts';
import type { RulingCode, RulingEffect } from '../../../engine/sheets/types.ts';
import { rulingCodes } from '../../../engine/sheets/types.ts';
import { Dialog } from '../dialog.tsx';
import { figure } from '../numbers.ts';
import { useParts } from '../parts.tsx';
import type { GoModel } from './go-model.ts';

export function RulingDialog({ model, open }: { readonly model: GoModel; readonly open: Signal<boolean> }) {
  const { t } = useParts();
  return (
    <Dialog open={open} title={t('judge-rulings', { number: model.entry.backNumber })}>
      <Rulings model={model} close={() => (open.value = false)} />
    </Dialog>
  );
}

function Rulings({ model, close }: { readonly model: GoModel; readonly close: () => void }) {
  const { t, speech } = useParts();
  const effectWords = useEffectWords();
  const { rulings } = model.dayClass.sheet;
  const given = model.go.value.ruling;
  const remark = useSignal(given?.remark ?? '');
  const rule = async (code: RulingCode | undefined) => {
    if (await model.rule(code, remark.value)) close();
  };
  return (
    <>
      <p class="note">{t('judge-rulings-caution')}</p>
      <label class="field">
        <span>{t('judge-ruling-remark')}</span>
        <input
          value={remark.value}
          maxLength={500}
          onInput={({ currentTarget }) => (remark.value = currentTarget.value)}
          onChange={() => given !== undefined && void model.rule(given.code, remark.value)}
        />
      </label>
      <ul class="rulings">
        {rulingCodes.map((code) => {
          const effect = rulings[code];
          return effect === undefined ? null : (
            <li key={code}>
              <button type="button" aria-pressed={given?.code === code} onClick={() => void rule(code)}>
                <strong>{speech.say(`ruling-${code}`)}</strong>
                <span>{effectWords(effect)}</span>
              </button>
            </li>
          );
        })}
      </ul>
      {given === undefined ? null : (
        <button type="button" class="main" onClick={() => void rule(undefined)}>
          {t('judge-ruling-back')}
        </button>
      )}
    </>
  );
}

function useEffectWords() {
  const { t, words } = useParts();
  return (effect: RulingEffect): string =>
    effect.kind === 'takes-points-off'
      ? t('judge-effect-takes-points-off', { points: figure(exact(effect.points), words) })
      : t(`judge-effect-${effect.kind}`);
}
