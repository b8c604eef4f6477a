/** Opens the desk: its verbs and signals over what goes on behind it. */
import { computed } from '@preact/signals';
import { keptKey } from '../../shared/kept-key.ts';
import { waitingRemarks } from '../go/waiting-remarks.ts';
import { checkContent } from './card-content.ts';
import { dayStateOf } from './day-state.ts';
import type { Desk, OpenDesk, SignCheck, SignOutcome } from './desk-types.ts';
import { DeskWorks } from './desk-works.ts';
import { exportOf } from './export-text.ts';
import { letGoOfPhone } from './let-go.ts';
import { orderPart, type Written } from './records.ts';
import { amendClass, checkSignable, type Signing, signClass } from './sign.ts';
import { change, openStore } from './store.ts';
import { dismissSignature, keepAmendment, putAway, settle, undo, write } from './write.ts';

export const openDesk: OpenDesk = async () => {
  const store = await openStore().catch(() => undefined);
  if (store === undefined) return undefined;
  const works = new DeskWorks(store, await keptKey());
  await works.begin();
  return { ...whatIsThere(works), ...writing(works), ...signing(works), ...thePhone(works) };
};

type Signals = 'day' | 'signal' | 'conflicts' | 'update' | 'leftBehind';
type Views = 'classOf' | 'goOf' | 'orderOf' | 'stateOf' | 'contentOf' | 'amendmentOf';

function whatIsThere({ key, keyState, mirror, hearing, update }: DeskWorks): Pick<Desk, Signals | Views> {
  const { conflicts, leftBehind, classOf, goOf, orderOf, stateOf, contentOf, amendmentOf } = mirror;
  const day = computed(() =>
    dayStateOf({
      key: keyState.value,
      thumbprint: key?.thumbprint,
      phone: mirror.phone.value,
      classes: mirror.classes.value,
    }),
  );
  const signal = computed(() => ({ ...hearing.state.value, unsent: mirror.unsent.value }));
  return {
    ...{ day, signal, conflicts, leftBehind, update: update.state },
    ...{ classOf, goOf, orderOf, stateOf, contentOf, amendmentOf },
  };
}

type WritingVerbs = 'writeGo' | 'writeOrder' | 'undo' | 'undoOrder' | 'settle' | 'dismissRefusal';

const writing = ({ room }: DeskWorks): Pick<Desk, WritingVerbs> => ({
  writeGo: (classId, part, go) => write(room, { classId, part }, asChange(go)),
  writeOrder: (classId, order) => write(room, { classId, part: orderPart }, asChange(order)),
  undo: (classId, part) => undo(room, { classId, part }),
  undoOrder: (classId) => undo(room, { classId, part: orderPart }),
  settle: (conflict, choice) => settle(room, conflict, choice),
  dismissRefusal: (classId, part) => putAway(room, { classId, part }),
});

/** The screen gives either what shall stand or how it changes. */
const asChange =
  <Part extends Written>(next: Part | ((kept: Part) => Part)) =>
  (kept: Written): Written =>
    typeof next === 'function' ? next(kept as Part) : next;

type SigningVerbs =
  | 'checkSignable'
  | 'checkAmendment'
  | 'sign'
  | 'amend'
  | 'keepAmendment'
  | 'dismissSignature';

function signing(works: DeskWorks): Pick<Desk, SigningVerbs> {
  const { room, mirror } = works;
  const asJudge = async (work: (signing: Signing) => Promise<SignOutcome>): Promise<SignOutcome> => {
    const may = whoSigns(works);
    return typeof may === 'string' ? { ok: false, why: may } : work(may);
  };
  return {
    checkSignable: (classId) => checkSignable(room, classId) ?? nothingToSign,
    checkAmendment: (classId, content) => {
      const day = mirror.onDesk(classId)?.day;
      return day === undefined ? nothingToSign : checkContent(day, content, 0);
    },
    sign: (classId) => asJudge((may) => signClass(may, classId)),
    amend: (classId, content, reason) => asJudge((may) => amendClass(may, { classId, content, reason })),
    keepAmendment: (classId, amendment) => keepAmendment(room, classId, amendment),
    dismissSignature: (classId) => dismissSignature(room, classId),
  };
}

function whoSigns({ room, mirror, key }: DeskWorks): Signing | 'scribe-phone' | 'revoked' {
  const kept = mirror.phone.peek();
  if (kept?.phone?.role === 'scribe') return 'scribe-phone';
  if (key === undefined || kept?.phone == null) return 'revoked';
  if (kept.ended !== null || kept.thumbprint !== key.thumbprint) return 'revoked';
  return { room, key, showId: kept.phone.show.id };
}

const nothingToSign: SignCheck = {
  ...{ mayBeSigned: false, content: { goes: {} }, missing: [], faults: [], openTies: [] },
  ...{ tiesMustBeBroken: false, conflicts: 0, card: undefined },
};

type PhoneVerbs = 'marking' | 'tryNow' | 'takeUpdate' | 'exportText' | 'letGo' | 'throwAway' | 'close';

function thePhone(works: DeskWorks): Pick<Desk, PhoneVerbs> {
  const { mirror, room, update } = works;
  return {
    marking: (classId) => works.mark(classId),
    tryNow: () => works.tryNow(),
    takeUpdate: () => update.take(),
    exportText: async () => {
      const all = mirror.classIds.peek().flatMap((classId) => mirror.onDesk(classId) ?? []);
      const classes = all.map((one) => ({ ...one, writings: [...one.writings.values()] }));
      return exportOf({ phone: mirror.phone.peek(), classes, remarks: waitingRemarks() });
    },
    letGo: async (options) => {
      const outcome = await letGoOfPhone(options);
      if (outcome.ok) await works.letGo();
      return outcome;
    },
    throwAway: async ({ id }) => {
      await change(room.store, (one) => one.objectStore('leftBehind').delete(id));
      mirror.leftBehind.value = await room.store.getAll('leftBehind');
    },
    close: () => works.close(),
  };
}
