import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { ChoiceField, Field, TextField } from '../pieces/field.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { Ruling, RulingKind } from './class-answers.ts';
import { groupsOf } from './ruling-order.ts';

interface RulingFormParts {
  readonly classId: string;
  readonly kinds: readonly RulingKind[];
  readonly entries: readonly { readonly id: string; readonly backNumber: number }[];
  readonly onRuled: () => void;
  readonly onLeave: () => void;
}

/** How a tie was decided outside the arithmetic: by what, in which order, by whom, and why. */
export function RulingForm({ classId, kinds, entries, onRuled, onLeave }: RulingFormParts) {
  const { t } = useWords();
  const [kind, setKind] = useState<RulingKind>(kinds[0] ?? 'judge');
  const [ranks, setRanks] = useState<readonly number[]>(entries.map((_entry, at) => at + 1));
  const [decidedBy, setDecidedBy] = useState('');
  const [why, setWhy] = useState('');
  const together = kind === 'share' || kind === 'declined';
  const ids = entries.map(({ id }) => id);
  const order = together ? [ids] : groupsOf(ids, ranks);
  const path = `/v1/classes/${classId}/rulings`;
  return (
    <SendingForm<Ruling>
      {...{ action: t('office-ruling-record'), label: t('office-ruling-record'), onDone: onRuled }}
      send={() => ask({ method: 'POST', path, body: { kind, order, decidedBy, why } })}
      beside={
        <button type="button" onClick={onLeave}>
          {t('shared-cancel')}
        </button>
      }
    >
      {(fields) => (
        <>
          <ChoiceField<RulingKind>
            {...{ label: t('office-ruling-kind'), value: kind, onValue: setKind }}
            choices={kinds.map((value) => ({ value, label: t(`office-ruling-${value}`) }))}
          />
          {!together && (
            <fieldset class="ranks">
              <legend>{t('office-ruling-order')}</legend>
              {entries.map(({ id, backNumber }, at) => (
                <ChoiceField<string>
                  key={id}
                  label={String(backNumber)}
                  value={String(ranks[at] ?? 1)}
                  onValue={(rank) => setRanks(ranks.map((was, other) => (other === at ? Number(rank) : was)))}
                  choices={entries.map((_entry, place) => ({
                    value: String(place + 1),
                    label: t('office-ruling-rank', { rank: place + 1 }),
                  }))}
                />
              ))}
              <p class="note">{t('office-ruling-order-hint')}</p>
              {fields.get('/order') !== undefined && <p class="field-fault">{fields.get('/order')}</p>}
            </fieldset>
          )}
          <Field
            {...{ label: t('office-ruling-by'), hint: t('office-ruling-by-hint'), value: decidedBy }}
            {...{ onValue: setDecidedBy, required: true, maxLength: 200, autocomplete: 'off' }}
            fault={fields.get('/decidedBy')}
          />
          <TextField
            {...{ label: t('office-ruling-why'), hint: t('office-ruling-why-hint'), value: why }}
            {...{ onValue: setWhy, required: true, maxLength: 1000, fault: fields.get('/why') }}
          />
        </>
      )}
    </SendingForm>
  );
}
