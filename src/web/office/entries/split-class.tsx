import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { Field, TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { ClassInHand } from './class-entries-screen.tsx';
import { splitPreview } from './class-moves.ts';
import { numberIn } from './typed-number.ts';

type Relations = Answer<'/v1/shows/{showId}/classes/{classId}/splits', 'post'>;

/** Some of the entries go to a new class like this one; who moves and who stays is said before it is done. */
export function SplitClass({ showId, classId, ofClass, entries, again }: ClassInHand) {
  const { t } = useWords();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [number, setNumber] = useState('');
  const [name, setName] = useState(ofClass.name);
  const [division, setDivision] = useState('');
  const [reason, setReason] = useState('');
  const { move, stay } = splitPreview(entries, chosen);
  const ready =
    move.length > 0 && numberIn(number) !== undefined && name.trim() !== '' && reason.trim() !== '';
  const tick = (id: string, on: boolean) =>
    setChosen(new Set(on ? [...chosen, id] : [...chosen].filter((one) => one !== id)));
  const done = () => {
    say(t('office-entries-split-done', { count: move.length, number }));
    setChosen(new Set());
    setReason('');
    void again();
  };
  return (
    <details>
      <summary>{t('office-entries-split')}</summary>
      <p class="note">{t('office-entries-split-what')}</p>
      <SendingForm<Relations>
        action={t('office-entries-split-do')}
        label={t('office-entries-split')}
        disabled={!ready}
        send={() =>
          ask({
            ...{ method: 'POST', path: `/v1/shows/${showId}/classes/${classId}/splits` },
            body: {
              reason,
              into: [
                {
                  ...{ number: numberIn(number), name: name.trim() },
                  division: division.trim() === '' ? null : division.trim(),
                  classEntryIds: move.map(({ id }) => id),
                },
              ],
            },
          })
        }
        onDone={done}
      >
        {(fields) => (
          <>
            <fieldset class="ticks numbers">
              <legend>{t('office-entries-split-who')}</legend>
              {[...move, ...stay]
                .toSorted((a, b) => a.backNumber - b.backNumber)
                .map(({ id, backNumber }) => (
                  <label key={id} class="tick figures">
                    <input
                      type="checkbox"
                      checked={chosen.has(id)}
                      onChange={({ currentTarget }) => tick(id, currentTarget.checked)}
                    />
                    {backNumber}
                  </label>
                ))}
            </fieldset>
            <Field
              {...{ label: t('office-entries-class-number'), value: number, onValue: setNumber }}
              {...{ inputMode: 'numeric', maxLength: 5, fault: fields.get('/into/0/number') }}
            />
            <Field
              {...{ label: t('office-entries-class-name'), value: name, onValue: setName, maxLength: 200 }}
              fault={fields.get('/into/0/name')}
            />
            <Field
              {...{
                label: t('office-entries-division'),
                value: division,
                onValue: setDivision,
                maxLength: 200,
              }}
              fault={fields.get('/into/0/division')}
            />
            <TextField
              {...{ label: t('office-entries-why'), hint: t('office-entries-why-hint'), value: reason }}
              {...{ onValue: setReason, fault: fields.get('/reason') }}
            />
            <p class="preview" role="status">
              {t('office-entries-split-preview', {
                ...{ moving: move.length, staying: stay.length, number: number === '' ? '…' : number },
                who: move.map(({ backNumber }) => backNumber).join(', '),
                rest: stay.map(({ backNumber }) => backNumber).join(', '),
              })}
            </p>
          </>
        )}
      </SendingForm>
    </details>
  );
}
