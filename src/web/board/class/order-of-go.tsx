/** The order of go, names in the form that is public. */
import { useWords } from '../../shared/words.tsx';
import type { OrderOfGo as Order } from './class-answer.ts';
import { Who } from './who.tsx';

export function OrderOfGo({ order: { drawn, goes } }: { readonly order: Order }) {
  const { t } = useWords();
  if (goes.length === 0) return <p class="note">{t('board-order-empty')}</p>;
  return (
    <section aria-labelledby="order">
      <h2 id="order">{t(drawn ? 'board-order' : 'board-entries')}</h2>
      {!drawn && <p class="note">{t('board-order-not-drawn')}</p>}
      <table class="typed-table order">
        <thead>
          <tr>
            {drawn && <th scope="col">{t('board-go')}</th>}
            <th scope="col">{t('board-back-number')}</th>
            <th scope="col">{t('board-who')}</th>
          </tr>
        </thead>
        <tbody>
          {goes.map(({ classEntryId, goPosition, backNumber, exhibitor, horse, status }) => (
            <tr key={classEntryId} class={isGoing(status) ? undefined : 'out'}>
              {drawn && <td class="figures">{goPosition ?? '–'}</td>}
              <th scope="row" class="figures">
                {backNumber}
              </th>
              <td>
                <Who name={exhibitor} horse={horse} />
                {status !== 'entered' && <span class="status"> {t(`shared-status-${status}`)}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const isGoing = (status: string): boolean => status === 'entered' || status === 'checked-in';
