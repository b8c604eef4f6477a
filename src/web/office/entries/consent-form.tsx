import { useState } from 'preact/hooks';
import type { Answer } from '../../shared/api.ts';
import { useWords } from '../../shared/words.tsx';
import { ask } from '../ask.ts';
import { showInHand } from '../office-state.ts';
import { ChoiceField, Field } from '../pieces/field.tsx';
import { say } from '../pieces/said.tsx';
import { SendingForm } from '../pieces/sending-form.tsx';

type Consent = Answer<'/v1/shows/{showId}/exhibitors/{exhibitorId}/consents', 'post'>;

interface FormParts {
  readonly showId: string;
  readonly exhibitorId: string;
  readonly onRecorded: (consent: Consent) => void;
}

const forms = ['back-number', 'first-name-and-initial', 'full'] as const;
const givers = ['parent', 'guardian', 'exhibitor'] as const;
const ways = ['signed-form', 'e-mail', 'in-person'] as const;

/** The family's word, as it was given. The most careful choice stands first. */
export function ConsentForm({ showId, exhibitorId, onRecorded }: FormParts) {
  const { t } = useWords();
  const [publicName, setPublicName] = useState<(typeof forms)[number]>('back-number');
  const [givenBy, setGivenBy] = useState<(typeof givers)[number]>('parent');
  const [how, setHow] = useState<(typeof ways)[number]>('signed-form');
  const [givenOn, setGivenOn] = useState(today());
  const choices = <Value extends string>(values: readonly Value[], words: string) =>
    values.map((value) => ({ value, label: t(`office-entries-${words}-${value}`) }));
  return (
    <SendingForm<Consent>
      action={t('office-entries-consent-record')}
      label={t('office-entries-consent-new')}
      send={() =>
        ask({
          ...{ method: 'POST', path: `/v1/shows/${showId}/exhibitors/${exhibitorId}/consents` },
          body: { publicName, givenBy, givenOn, how },
        })
      }
      onDone={(consent) => {
        say(t('office-entries-consent-recorded'));
        onRecorded(consent);
      }}
    >
      {(fields) => (
        <>
          <ChoiceField
            {...{ label: t('office-entries-consent-name'), value: publicName, onValue: setPublicName }}
            {...{ choices: choices(forms, 'name'), hint: t('office-entries-consent-name-hint') }}
            fault={fields.get('/publicName')}
          />
          <ChoiceField
            {...{ label: t('office-entries-consent-giver'), value: givenBy, onValue: setGivenBy }}
            {...{ choices: choices(givers, 'giver'), fault: fields.get('/givenBy') }}
          />
          <Field
            {...{ label: t('office-entries-consent-day'), value: givenOn, onValue: setGivenOn }}
            {...{ type: 'date', fault: fields.get('/givenOn') }}
          />
          <ChoiceField
            {...{ label: t('office-entries-consent-how'), value: how, onValue: setHow }}
            {...{ choices: choices(ways, 'how'), fault: fields.get('/how') }}
          />
        </>
      )}
    </SendingForm>
  );
}

/** By the calendar of the show grounds, as `2026-08-15`. */
function today(): string {
  const timeZone = showInHand.value?.timeZone ?? 'UTC';
  return new Intl.DateTimeFormat('sv-SE', { timeZone }).format(new Date());
}
