/** A signed card: it stays as it is, and an amendment with a reason follows it. Both stay readable. */
import { useSignal } from '@preact/signals';
import { useLocation } from 'wouter-preact';
import { useDerived } from '../derived.ts';
import type { DayClass } from '../desk/day-types.ts';
import { isRail } from '../entries.ts';
import { useParts } from '../parts.tsx';
import { usePhone } from '../show.ts';
import { Missing } from './missing.tsx';

export function AmendPart({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, books } = useParts();
  const { classId } = dayClass;
  const phone = usePhone();
  const amends = books.of(classId).value.amends;
  const reason = dayClass.card.signed?.reason ?? null;
  return (
    <section class="amend">
      {reason === null ? null : <p>{t('judge-amended-because', { reason })}</p>}
      {phone?.role === 'scribe' ? (
        <p class="note">{t('judge-scribe-amends-not', { judge: phone.judge.name })}</p>
      ) : amends ? (
        <Amending dayClass={dayClass} />
      ) : (
        <BeginAmendment dayClass={dayClass} />
      )}
    </section>
  );
}

function BeginAmendment({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, desk } = useParts();
  const [, go] = useLocation();
  const { classId } = dayClass;
  const refused = useSignal('');
  const begin = async () => {
    const content = desk.contentOf(classId).value;
    const outcome = await desk.keepAmendment(classId, { content, reason: '' });
    refused.value = outcome.ok ? '' : t(`judge-not-written-${outcome.why}`);
    if (outcome.ok) go(isRail(dayClass) ? `/classes/${classId}/places` : `/classes/${classId}/compare`);
  };
  return (
    <>
      <p>{t('judge-amend-what')}</p>
      <div role="alert">{refused.value === '' ? null : <p class="fault">{refused.value}</p>}</div>
      <button type="button" onClick={() => void begin()}>
        {t('judge-amend-begin')}
      </button>
    </>
  );
}

function Amending({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, desk } = useParts();
  const { classId } = dayClass;
  const kept = desk.amendmentOf(classId).value;
  const reason = useSignal(kept?.reason ?? '');
  const refused = useSignal('');
  const check = useDerived(() => {
    const content = desk.amendmentOf(classId).value?.content;
    return content === undefined ? undefined : desk.checkAmendment(classId, content);
  }, [desk, classId]);
  const keep = () => {
    const content = desk.amendmentOf(classId).value?.content;
    if (content !== undefined) void desk.keepAmendment(classId, { content, reason: reason.value });
  };
  const sign = async () => {
    const content = desk.amendmentOf(classId).value?.content;
    if (content === undefined) return;
    const outcome = await desk.amend(classId, content, reason.value.trim());
    refused.value = outcome.ok ? '' : t(`judge-not-signed-${outcome.why}`);
  };
  return (
    <>
      <p class="heed">{t('judge-amending')}</p>
      {check === undefined ? null : (
        <Missing dayClass={dayClass} check={check} nothing={t('judge-nothing-missing')} />
      )}
      <form
        class="field"
        onSubmit={(event) => {
          event.preventDefault();
          void sign();
        }}
      >
        <label>
          <span>{t('judge-amend-reason')}</span>
          <textarea
            rows={3}
            maxLength={500}
            value={reason.value}
            onInput={({ currentTarget }) => {
              reason.value = currentTarget.value;
              refused.value = '';
            }}
            onBlur={keep}
          />
        </label>
        <div role="alert">{refused.value === '' ? null : <p class="fault">{refused.value}</p>}</div>
        <button type="submit" class="main">
          {t('judge-amend-sign')}
        </button>
        <button type="button" class="grave" onClick={() => void desk.keepAmendment(classId, null)}>
          {t('judge-amend-drop')}
        </button>
      </form>
    </>
  );
}
