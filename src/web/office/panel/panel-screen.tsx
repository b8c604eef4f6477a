import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import type { Panel, Seat, ShowClass } from '../class/class-answers.ts';
import { ClassFrame } from '../class/class-frame.tsx';
import { concernsClass } from '../office-state.ts';
import { Modal } from '../pieces/confirm-dialog.tsx';
import { ChoiceField, TextField } from '../pieces/field.tsx';
import { Part } from '../pieces/part.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';
import { Shown } from '../pieces/shown.tsx';
import { useAsked } from '../use-asked.ts';
import { useMayWrite, useShowClock } from '../use-show.ts';
import { SeatPanel } from './seat-panel.tsx';

export type People = Answer<'/v1/shows/{showId}/people'>;

/** Who judges a class: seated before a card is written; a judge who leaves is replaced, with the reason. */
export function PanelScreen({ showId, classId }: { readonly showId: string; readonly classId: string }) {
  const { t } = useWords();
  const mayWrite = useMayWrite();
  const path = `/v1/shows/${showId}/classes/${classId}/panel`;
  const panel = useAsked<Panel>(path, { on: concernsClass(classId) });
  const people = useAsked<People>(`/v1/shows/${showId}/people?limit=200`);
  return (
    <ClassFrame {...{ showId, classId, at: 'panel' }}>
      {(ofClass) => (
        <Shown asked={panel}>
          {(seated) => (
            <Shown asked={people}>
              {({ items }) => (
                <>
                  <Part title={t('office-seats')}>
                    <Seats {...{ path, seated, people: items, mayWrite, again: panel.again }} />
                  </Part>
                  {mayWrite && ofClass.openedAt === null && ofClass.status === 'open' && (
                    <Part title={t('office-seat-panel')}>
                      <SeatPanel
                        key={seated.classVersion}
                        {...{ path, seated, people: items, showId }}
                        again={async () => void (await Promise.all([panel.again(), people.again()]))}
                      />
                    </Part>
                  )}
                </>
              )}
            </Shown>
          )}
        </Shown>
      )}
    </ClassFrame>
  );
}

export type PanelClass = ShowClass;

interface SeatsParts {
  readonly path: string;
  readonly seated: Panel;
  readonly people: People['items'];
  readonly mayWrite: boolean;
  readonly again: () => Promise<void>;
}

function Seats({ path, seated, people, mayWrite, again }: SeatsParts) {
  const { t } = useWords();
  const { moment } = useShowClock();
  const [leaving, leave] = useState<Seat | undefined>(undefined);
  if (seated.seats.length === 0) return <p>{t('office-seats-none')}</p>;
  return (
    <>
      <RuledTable caption={t('office-seats')}>
        <thead>
          <tr>
            <th scope="col">{t('office-seat')}</th>
            <th scope="col">{t('office-judge')}</th>
            <th scope="col">{t('office-seat-order')}</th>
            {mayWrite && <th scope="col">{t('office-to-do')}</th>}
          </tr>
        </thead>
        <tbody>
          {seated.seats.map((seat) => (
            <tr key={seat.id}>
              <td class="figures">{seat.seatOrder}</td>
              <th scope="row">
                {seat.name}
                {seat.role === 'referee' && ` (${t('office-referee')})`}
              </th>
              <td>{orderWords(seat, t)}</td>
              {mayWrite && (
                <td>
                  {seat.withdrawnAt === null ? (
                    <button type="button" class="small grave" onClick={() => leave(seat)}>
                      {t('office-seat-leaves')}
                      <span class="heard"> {seat.name}</span>
                    </button>
                  ) : (
                    t('office-seat-left', { time: moment(seat.withdrawnAt) })
                  )}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </RuledTable>
      <Modal
        title={t('office-seat-leaves-ask', { judge: leaving?.name ?? '' })}
        open={leaving !== undefined}
        onClose={() => leave(undefined)}
      >
        {leaving !== undefined && (
          <Leave {...{ path, seat: leaving, seated, people, again, onClose: () => leave(undefined) }} />
        )}
      </Modal>
    </>
  );
}

function orderWords({ callOrder, tieOrder }: Seat, t: ReturnType<typeof useWords>['t']): string {
  const call = callOrder === null ? [] : [t('office-seat-call', { order: callOrder })];
  const tie = tieOrder === null ? [] : [t('office-seat-tie', { order: tieOrder })];
  return [...call, ...tie].join(', ');
}

interface LeaveParts extends Omit<SeatsParts, 'mayWrite'> {
  readonly seat: Seat;
  readonly onClose: () => void;
}

const nobody = '';

function Leave({ path, seat, seated, people, again, onClose }: LeaveParts) {
  const { t } = useWords();
  const [reason, setReason] = useState('');
  const [replacementId, setReplacement] = useState(nobody);
  const sits = (id: string) =>
    seated.seats.some(({ personId, withdrawnAt }) => personId === id && withdrawnAt === null);
  const free = people.filter(({ id }) => !sits(id));
  const body = { reason: reason.trim(), ...(replacementId === nobody ? {} : { replacementId }) };
  return (
    <>
      <p>{t('office-seat-leaves-why')}</p>
      <SendingForm<Panel>
        {...{ action: t('office-seat-leaves-do'), grave: true }}
        send={() => ask({ method: 'POST', path: `${path}/${seat.id}/withdrawal`, body })}
        onDone={() => {
          say(t('office-seat-left-said', { judge: seat.name }));
          onClose();
          void again();
        }}
        beside={
          <button type="button" onClick={onClose}>
            {t('shared-cancel')}
          </button>
        }
      >
        {(fields) => (
          <>
            <TextField
              {...{ label: t('office-reason'), value: reason, onValue: setReason, required: true }}
              fault={fields.get('/reason')}
            />
            <ChoiceField<string>
              {...{ label: t('office-seat-replacement'), value: replacementId, onValue: setReplacement }}
              choices={[
                { value: nobody, label: t('office-seat-nobody') },
                ...free.map(({ id, name }) => ({ value: id, label: name })),
              ]}
              fault={fields.get('/replacementId')}
            />
          </>
        )}
      </SendingForm>
    </>
  );
}
