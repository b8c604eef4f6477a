import { useWords } from '../../shared/words.tsx';
import { RuledTable } from '../pieces/ruled-table.tsx';
import { type Agreement, recordOf } from './closeness-answers.ts';
import { roundedFigure } from './figures.ts';

/** Judges two by two, and each on a scale of her own. */
export function PairTable({ agreement }: { readonly agreement: Agreement }) {
  const words = useWords();
  const { t } = words;
  const { pairs } = recordOf(agreement);
  const nameOf = (seatId: string) => agreement.judges.find((judge) => judge.seatId === seatId)?.name ?? '';
  if (pairs.length === 0) return null;
  return (
    <RuledTable caption={t('office-closeness-pairs')} captionSeen={true}>
      <thead>
        <tr>
          <th scope="col">{t('office-closeness-two')}</th>
          <th scope="col">{t('office-closeness-same-order')}</th>
          <th scope="col">{t('office-closeness-entries')}</th>
        </tr>
      </thead>
      <tbody>
        {pairs.map(({ judges, tauB, entries }) => (
          <tr key={judges.join()}>
            <th scope="row">{judges.map(nameOf).join(' · ')}</th>
            <td class="figures">
              {tauB === null ? '–' : roundedFigure(tauB.value, { digits: 2, signed: true, words })}
            </td>
            <td class="figures">{entries}</td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}

export function ScaleTable({ agreement }: { readonly agreement: Agreement }) {
  const words = useWords();
  const { t } = words;
  const { judges } = recordOf(agreement);
  const nameOf = (seatId: string) => agreement.judges.find((judge) => judge.seatId === seatId)?.name ?? '';
  if (judges.every(({ scores }) => scores === null)) return null;
  return (
    <RuledTable caption={t('office-closeness-scales')} captionSeen={true}>
      <thead>
        <tr>
          <th scope="col">{t('office-closeness-judge-name')}</th>
          <th scope="col">{t('office-closeness-mean')}</th>
          <th scope="col">{t('office-closeness-spread')}</th>
        </tr>
      </thead>
      <tbody>
        {judges.map(({ judge, scores }) => (
          <tr key={judge}>
            <th scope="row">{nameOf(judge)}</th>
            <td class="figures">
              {scores === null ? '–' : roundedFigure(scores.mean, { digits: 2, words })}
            </td>
            <td class="figures">
              {scores === null ? '–' : roundedFigure(scores.deviation, { digits: 2, words })}
            </td>
          </tr>
        ))}
      </tbody>
    </RuledTable>
  );
}
