import { Route, Router, Switch } from 'wouter-preact';
import { AnnounceScreen } from './screens/announce-screen.tsx';
import { ChooseShow } from './screens/choose-show.tsx';
import { ClassScreen } from './screens/class-screen.tsx';
import { DayScreen } from './screens/day-screen.tsx';
import { NobodyHere } from './screens/nobody-here.tsx';
import { OrderScreen } from './screens/order-screen.tsx';
import { useDesk } from './use-desk.ts';

export function GatePage({ onLanguage }: { readonly onLanguage: () => void }) {
  const desk = useDesk();
  const state = desk.state.value;
  switch (state.is) {
    case 'loading':
      return null;
    case 'choose-show':
      return <ChooseShow />;
    case 'other-phone':
    case 'waiting':
    case 'ended':
      return <NobodyHere {...state} onLanguage={onLanguage} />;
    case 'here':
      return (
        <Router base="/gate">
          <Switch>
            <Route path="/classes/:classId/announce">
              {({ classId }) => <AnnounceScreen classId={classId} show={state.show} />}
            </Route>
            <Route path="/classes/:classId/order">
              {({ classId }) => <OrderScreen classId={classId} show={state.show} />}
            </Route>
            <Route path="/classes/:classId">
              {({ classId }) => <ClassScreen classId={classId} show={state.show} />}
            </Route>
            <Route>
              <DayScreen show={state.show} onLanguage={onLanguage} />
            </Route>
          </Switch>
        </Router>
      );
  }
}
