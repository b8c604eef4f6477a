import { useRef, useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import type { Outcome } from '../ask.ts';
import { Field, TextField } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { ClassTicks } from './class-ticks.tsx';
import type { Exhibitor } from './entry-screen.tsx';
import type { Entry } from './entry-search.ts';
import { freeNumbers } from './free-numbers.ts';
import { type Chosen, type Known, KnownOrNew } from './known-or-new.tsx';
import { type LateEntryOutcome, type Made, type Step, sendLateEntry } from './late-entry.ts';
import type { JustEntered } from './late-entry-screen.tsx';
import { takesEntries } from './open-classes.ts';
import { numberIn } from './typed-number.ts';

export type BoardClass = Answer<'/v1/shows/{showId}/board'>['classes'][number];

interface FormParts {
  readonly showId: string;
  readonly entries: readonly Entry[];
  readonly exhibitors: readonly Exhibitor[];
  readonly horses: readonly { readonly id: string; readonly name: string }[];
  readonly classes: readonly BoardClass[];
  readonly onEntered: (entered: JustEntered) => void;
}

/** Sent again after a refusal it goes on where it stopped; nothing is made twice. */
export function LateEntryForm({ showId, entries, exhibitors, horses, classes, onEntered }: FormParts) {
  const { t } = useWords();
  const [exhibitor, setExhibitor] = useState<Chosen>({ name: '' });
  const [bornOn, setBornOn] = useState('');
  const [horse, setHorse] = useState<Chosen>({ name: '' });
  const [typedNumber, setTypedNumber] = useState<string | undefined>(undefined);
  const [classIds, setClassIds] = useState<readonly string[]>([]);
  const [reason, setReason] = useState('');
  const [step, setStep] = useState<Step | undefined>(undefined);
  const made = useRef<Made>({});
  const taken = entries.filter(({ id }) => id !== made.current.entry?.id);
  const { next, between } = freeNumbers(taken.map(({ backNumber }) => backNumber));
  const text = typedNumber ?? String(next);
  const number = numberIn(text);
  const wearer = taken.find((entry) => entry.backNumber === number && !isOurs(entry, made.current));
  const open = classes.filter(takesEntries).toSorted((a, b) => a.number - b.number);
  const isLate = open.some(({ id, state }) => classIds.includes(id) && state !== 'setting-up');
  const ready = exhibitor.name.trim() !== '' && horse.name.trim() !== '' && number !== undefined && !wearer;
  const send = async (): Promise<Outcome<LateEntryOutcome>> => {
    // The number that is sent stays, though the list of entries may hold it by the time the answer comes.
    setTypedNumber(text);
    const outcome = await sendLateEntry(
      showId,
      {
        exhibitor: chosenOf(exhibitor, { bornOn: bornOn === '' ? null : bornOn }),
        horse: chosenOf(horse, {}),
        ...{ backNumber: number ?? 0, classIds, reason },
      },
      made.current,
    );
    made.current = outcome.made;
    setStep(outcome.refused?.step);
    if (outcome.refused !== undefined) return outcome.refused.why;
    return { ok: true, body: outcome, etag: undefined };
  };
  const done = ({ made: { entry } }: LateEntryOutcome) => {
    const numbers = open.filter(({ id }) => classIds.includes(id)).map((one) => one.number);
    say(t('office-entries-entered', { number: text, count: numbers.length, classes: numbers.join(', ') }));
    onEntered({ entryId: entry?.id ?? '', backNumber: number ?? 0, classes: numbers.join(', ') });
  };
  return (
    <SendingForm<LateEntryOutcome>
      action={t('office-entries-late-send')}
      label={t('office-entries-late')}
      disabled={!ready}
      send={send}
      onDone={done}
    >
      {(fields) => (
        <>
          <KnownOrNew
            {...{ label: t('office-entries-exhibitor'), chosen: exhibitor, onChosen: setExhibitor }}
            {...{
              known: knownIn(exhibitors, entries, 'exhibitor'),
              newWords: t('office-entries-new-exhibitor'),
            }}
            fault={step === 'exhibitor' ? fields.get('/name') : undefined}
            begins={true}
          />
          {!('id' in exhibitor) && exhibitor.name.trim() !== '' && (
            <Field
              {...{ label: t('office-entries-born-on'), hint: t('office-entries-born-on-hint') }}
              {...{ type: 'date', value: bornOn, onValue: setBornOn, fault: fields.get('/bornOn') }}
            />
          )}
          <KnownOrNew
            {...{ label: t('office-entries-horse'), chosen: horse, onChosen: setHorse }}
            {...{ known: knownIn(horses, entries, 'horse'), newWords: t('office-entries-new-horse') }}
            fault={step === 'horse' ? fields.get('/name') : undefined}
          />
          <Field
            {...{ label: t('office-entries-number'), value: text, onValue: setTypedNumber }}
            {...{ inputMode: 'numeric', autocomplete: 'off', maxLength: 5 }}
            hint={t('office-entries-free', { next, between: between.join(', '), count: between.length })}
            fault={
              wearer === undefined
                ? fields.get('/backNumber')
                : t('office-entries-taken', {
                    ...{
                      number: wearer.backNumber,
                      exhibitor: wearer.exhibitor.name,
                      horse: wearer.horse.name,
                    },
                  })
            }
          />
          <ClassTicks {...{ classes: open, chosen: classIds, onChosen: setClassIds }} />
          {isLate && (
            <TextField
              {...{ label: t('office-entries-why-late'), hint: t('office-entries-why-late-hint') }}
              {...{ value: reason, onValue: setReason, fault: fields.get('/reason') }}
            />
          )}
          {step !== undefined && made.current.exhibitor !== undefined && (
            <p class="note">{t('office-entries-goes-on')}</p>
          )}
        </>
      )}
    </SendingForm>
  );
}

/** Made by this very form, whose answer was lost: sent again it is the same entry. */
const isOurs = ({ exhibitor, horse }: Entry, made: Made): boolean =>
  made.exhibitor?.id === exhibitor.id && made.horse?.id === horse.id;

const chosenOf = <More extends object>(chosen: Chosen, more: More) =>
  'id' in chosen ? { id: chosen.id } : { name: chosen.name.trim(), ...more };

/** Those of the show, each with the numbers that it goes under. */
function knownIn(
  all: readonly { readonly id: string; readonly name: string; readonly erasedAt?: string | null }[],
  entries: readonly Entry[],
  as: 'exhibitor' | 'horse',
): readonly Known[] {
  return all
    .filter(({ erasedAt }) => erasedAt === undefined || erasedAt === null)
    .map(({ id, name }) => {
      const numbers = entries.filter((entry) => entry[as].id === id).map(({ backNumber }) => backNumber);
      return { id, name, beside: numbers.join(', ') };
    });
}
