import { useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import type { Panel } from '../class/class-answers.ts';
import { ChoiceField, Field } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import type { People } from './panel-screen.tsx';

interface SeatPanelParts {
  readonly path: string;
  readonly seated: Panel;
  readonly people: People['items'];
  readonly showId: string;
  readonly again: () => Promise<void>;
}

interface WantedSeat {
  readonly personId: string;
  readonly role: 'judge' | 'referee';
  readonly callOrder: number | null;
  readonly tieOrder: number | null;
}

const nobody = '';

/** Puts the panel anew, seat by seat, before a card is written. */
export function SeatPanel({ path, seated, people, showId, again }: SeatPanelParts) {
  const { t } = useWords();
  const sitting = seated.seats.filter(({ withdrawnAt }) => withdrawnAt === null);
  const [seats, setSeats] = useState<readonly WantedSeat[]>(
    sitting.map(({ personId, role, callOrder, tieOrder }) => ({ personId, role, callOrder, tieOrder })),
  );
  const change = (at: number, next: WantedSeat) =>
    setSeats(seats.map((seat, other) => (other === at ? next : seat)));
  const nobodyYet = { value: nobody, label: t('office-seat-nobody') };
  const choices = people.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <>
      <SendingForm<Panel>
        action={t('office-seat-save')}
        send={() => ask({ method: 'PUT', path, body: { seats }, ifMatch: `"${seated.classVersion}"` })}
        onDone={() => {
          say(t('office-seat-saved'));
          void again();
        }}
        onRefused={({ code }) => code === 'stale_version' && void again()}
      >
        {() => (
          <ol class="lines">
            {seats.map((seat, at) => (
              // A seat is its place on the panel.
              <li key={at} class="seat">
                <ChoiceField<string>
                  label={t('office-judge-seat', { seat: at + 1 })}
                  value={seat.personId}
                  onValue={(personId) => change(at, { ...seat, personId })}
                  choices={choices}
                />
                <ChoiceField<WantedSeat['role']>
                  label={t('office-seat-role')}
                  value={seat.role}
                  onValue={(role) => change(at, { ...seat, role })}
                  choices={[
                    { value: 'judge', label: t('office-judge') },
                    { value: 'referee', label: t('office-referee') },
                  ]}
                />
                <button
                  type="button"
                  class="small"
                  onClick={() => setSeats(seats.filter((_seat, other) => other !== at))}
                >
                  {t('office-seat-take-off')}
                  <span class="heard"> {at + 1}</span>
                </button>
              </li>
            ))}
            <li class="seat">
              <ChoiceField<string>
                label={t('office-seat-add')}
                value={nobody}
                onValue={(personId) =>
                  personId !== nobody &&
                  setSeats([...seats, { personId, role: 'judge', callOrder: null, tieOrder: null }])
                }
                choices={[nobodyYet, ...choices]}
              />
            </li>
          </ol>
        )}
      </SendingForm>
      <AddPerson {...{ showId, again }} />
    </>
  );
}

function AddPerson({ showId, again }: Pick<SeatPanelParts, 'showId' | 'again'>) {
  const { t } = useWords();
  const [name, setName] = useState('');
  return (
    <SendingForm<People['items'][number]>
      action={t('office-person-add')}
      send={() => ask({ method: 'POST', path: `/v1/shows/${showId}/people`, body: { name: name.trim() } })}
      onDone={(person) => {
        setName('');
        say(t('office-person-added', { name: person.name }));
        void again();
      }}
    >
      {(fields) => (
        <Field
          {...{ label: t('office-person-name'), value: name, onValue: setName, autocomplete: 'off' }}
          fault={fields.get('/name')}
        />
      )}
    </SendingForm>
  );
}
