/** The card before it is signed: what is missing, with a way there; what it comes to; then the signature. */
import { useSignal } from '@preact/signals';
import { useLocation } from 'wouter-preact';
import { CardStateLine } from '../class/card-state-line.tsx';
import { useDerived } from '../derived.ts';
import type { DayClass } from '../desk/day-types.ts';
import type { SignOutcome } from '../desk/desk-types.ts';
import { isRail } from '../entries.ts';
import { useParts } from '../parts.tsx';
import { Screen } from '../screen.tsx';
import { usePhone } from '../show.ts';
import { AmendPart } from './amend-part.tsx';
import { Missing } from './missing.tsx';
import { Summary } from './summary.tsx';
import { TendencyPart } from './tendency-part.tsx';

export function SignScreen({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, desk, books } = useParts();
  const { classId } = dayClass;
  const book = books.of(classId).value;
  const isSigned = book.shut.value === 'signed' || book.amends;
  return (
    <Screen
      title={t(isSigned ? 'judge-signed-card' : 'judge-sign-title')}
      over={`${dayClass.number} ${dayClass.name}`}
      back={
        isRail(dayClass)
          ? { href: `/classes/${classId}/places`, label: t('judge-places') }
          : { href: `/classes/${classId}/compare`, label: t('judge-compare') }
      }
      reach={isSigned ? undefined : <SignReach dayClass={dayClass} />}
    >
      <CardStateLine dayClass={dayClass} />
      {isSigned ? <AmendPart dayClass={dayClass} /> : <ToSign dayClass={dayClass} />}
      <Summary dayClass={dayClass} />
      <TendencyPart dayClass={dayClass} />
      <p class="note">{t('judge-sign-caution')}</p>
      {desk.stateOf(classId).value.is === 'signature-refused' ? (
        <p class="heed">{t('judge-sign-again')}</p>
      ) : null}
    </Screen>
  );
}

/** Asked anew whenever the card changes. */
function useSignCheck(dayClass: DayClass) {
  const { desk } = useParts();
  return useDerived(() => {
    desk.contentOf(dayClass.classId).value;
    desk.conflicts.value;
    desk.classOf(dayClass.classId).value;
    return desk.checkSignable(dayClass.classId);
  }, [desk, dayClass]);
}

function ToSign({ dayClass }: { readonly dayClass: DayClass }) {
  const { t } = useParts();
  const check = useSignCheck(dayClass);
  return <Missing dayClass={dayClass} check={check} nothing={t('judge-nothing-missing')} />;
}

function SignReach({ dayClass }: { readonly dayClass: DayClass }) {
  const { t, desk } = useParts();
  const [, go] = useLocation();
  const check = useSignCheck(dayClass);
  const refused = useSignal<Exclude<SignOutcome, { ok: true }> | null>(null);
  const busy = useSignal(false);
  const phone = usePhone();
  if (phone?.role === 'scribe') {
    return <p class="heed">{t('judge-scribe-signs-not', { judge: phone.judge.name })}</p>;
  }
  const sign = async () => {
    busy.value = true;
    const outcome = await desk.sign(dayClass.classId);
    busy.value = false;
    refused.value = outcome.ok ? null : outcome;
    if (outcome.ok) go(`/classes/${dayClass.classId}/sign`);
  };
  return (
    <>
      <div role="alert">
        {refused.value === null ? null : <p class="fault">{t(`judge-not-signed-${refused.value.why}`)}</p>}
      </div>
      <button
        type="button"
        class="main"
        disabled={!check.mayBeSigned || busy.value}
        onClick={() => void sign()}
      >
        {t(check.mayBeSigned ? 'judge-sign' : 'judge-sign-not-yet')}
      </button>
    </>
  );
}
