/** The page `/judge`: which screen an address means, and what is shown where there is no day. */
import type { FunctionComponent } from 'preact';
import { Route, Router, Switch } from 'wouter-preact';
import { useWords } from '../shared/words.tsx';
import { ClassScreen } from './class/class-screen.tsx';
import { DayScreen } from './day/day-screen.tsx';
import { NotHere } from './day/not-here.tsx';
import { useSame } from './derived.ts';
import type { DayClass } from './desk/day-types.ts';
import { GoScreen } from './go/go-screen.tsx';
import { later } from './later.tsx';
import { useParts } from './parts.tsx';
import { Screen } from './screen.tsx';

const DifferencesScreen = later(
  async () => (await import('./conflict/differences-screen.tsx')).DifferencesScreen,
);
const PlacesScreen = later(async () => (await import('./places/places-screen.tsx')).PlacesScreen);
const SignScreen = later(async () => (await import('./sign/sign-screen.tsx')).SignScreen);
const CompareScreen = later(async () => (await import('./compare/compare-screen.tsx')).CompareScreen);

export function JudgePage({ onLanguage }: { readonly onLanguage: () => void }) {
  const { desk } = useParts();
  const state = desk.day.value;
  switch (state.is) {
    case 'here':
    case 'revoked':
      return (
        <Router base="/judge">
          <Screens onLanguage={onLanguage} />
        </Router>
      );
    case 'not-paired':
    case 'paired-no-day':
      return <NotHere is={state.is} because={state.because} onLanguage={onLanguage} />;
    case 'loading':
    case 'gate-phone':
      return <NotHere is={state.is} because={null} onLanguage={onLanguage} />;
  }
}

function Screens({ onLanguage }: { readonly onLanguage: () => void }) {
  return (
    <Switch>
      <Route path="/classes/:classId">
        {({ classId }) => <OfClass key={classId} classId={classId} Show={ClassScreen} />}
      </Route>
      <Route path="/classes/:classId/compare">
        {({ classId }) => <OfClass key={classId} classId={classId} Show={CompareScreen} />}
      </Route>
      <Route path="/classes/:classId/places">
        {({ classId }) => <OfClass key={classId} classId={classId} Show={PlacesScreen} />}
      </Route>
      <Route path="/classes/:classId/sign">
        {({ classId }) => <OfClass key={classId} classId={classId} Show={SignScreen} />}
      </Route>
      <Route path="/classes/:classId/goes/:entryId">
        {({ classId, entryId }) => <OneGo key={entryId} classId={classId} entryId={entryId} />}
      </Route>
      <Route path="/differences">
        <DifferencesScreen />
      </Route>
      <Route path="/">
        <OfDay onLanguage={onLanguage} />
      </Route>
      <Route>
        <Nowhere />
      </Route>
    </Switch>
  );
}

function OfDay({ onLanguage }: { readonly onLanguage: () => void }) {
  const { desk } = useParts();
  const state = desk.day.value;
  return state.is === 'here' || state.is === 'revoked' ? (
    <DayScreen day={state.day} onLanguage={onLanguage} />
  ) : null;
}

/** The same object until something of it changes that is not in the desk's own signals (goes, order). */
function useClass(classId: string): DayClass | undefined {
  const { desk } = useParts();
  return useSame(desk.classOf(classId).value, (dayClass) => {
    if (dayClass === undefined) return '';
    const { card, ...rest } = dayClass;
    return JSON.stringify([rest, card.signed?.revision, card.signed?.reason]);
  });
}

interface OfClassProps {
  readonly classId: string;
  readonly Show: FunctionComponent<{ readonly dayClass: DayClass }>;
}

function OfClass({ classId, Show }: OfClassProps) {
  const dayClass = useClass(classId);
  return dayClass === undefined ? <Nowhere /> : <Show dayClass={dayClass} />;
}

function OneGo({ classId, entryId }: { readonly classId: string; readonly entryId: string }) {
  const dayClass = useClass(classId);
  const entry = dayClass?.entries.find(({ classEntryId }) => classEntryId === entryId);
  return dayClass === undefined || entry === undefined ? (
    <Nowhere />
  ) : (
    <GoScreen dayClass={dayClass} entry={entry} />
  );
}

/** A class or an entry that this seat does not have, or has no more. */
function Nowhere() {
  const { t } = useWords();
  return (
    <Screen title={t('shared-nothing-here')} back={{ href: '/', label: t('judge-day') }}>
      <p>{t('judge-nothing-here')}</p>
    </Screen>
  );
}
