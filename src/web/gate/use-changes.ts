/** What the gate does to an entry or a class, said afterwards, with the way back. */
import { useWords } from '../shared/words.tsx';
import { needsReason, wayBack } from './desk/gate-sheet.ts';
import type { Change, ClassLine, EntryLine, GivenStatus } from './desk/gate-types.ts';
import { said, say } from './said.ts';
import { useDesk } from './use-desk.ts';

export interface NewStatus {
  readonly entry: EntryLine;
  readonly status: GivenStatus;
  readonly reason: string | null;
}

export function useChanges(line: ClassLine) {
  const desk = useDesk();
  const { t } = useWords();

  const statusChange = (entry: EntryLine, status: GivenStatus, reason: string | null): Change => ({
    ...{ kind: 'status', classEntryId: entry.id, backNumber: entry.backNumber, status, reason },
  });

  /** What waits is taken out; what may be at the service already is followed by the way back. */
  const undoStatus = async ({ entry, status }: NewStatus) => {
    const own = desk.outgoing.peek().findLast(({ change }) => isOfEntry(change, entry.id));
    const isOut = own !== undefined && (await desk.drop(own.id));
    if (!isOut) await desk.change(line, changesBack(entry, status));
    say(t('gate-undone', { backNumber: `${entry.backNumber}` }));
  };

  const changesBack = (entry: EntryLine, now: GivenStatus): Change[] => {
    let from: EntryLine['status'] = now;
    return wayBack(now, entry.status).map((to) => {
      const reason = needsReason(from, to) ? t('gate-reason-undone') : null;
      from = to;
      return statusChange(entry, to, reason);
    });
  };

  const setStatus = async (asked: NewStatus) => {
    const { entry, status, reason } = asked;
    await desk.change(line, [statusChange(entry, status, reason)]);
    const text = t('gate-said-status', {
      backNumber: `${entry.backNumber}`,
      status: t(`shared-status-${status}`),
    });
    const mayUndo = wayBack(status, entry.status).length > 0;
    say(text, mayUndo ? () => undoStatus(asked) : undefined);
  };

  const setOrder = async (order: readonly string[], reason: string) => {
    const before = orderBefore();
    await desk.change(line, [{ kind: 'order', order, reason }]);
    say(t('gate-said-order'), async () => {
      await desk.change(line, [{ kind: 'order', order: before, reason: t('gate-reason-undone') }]);
      said.value = { text: t('gate-undone-order') };
    });
  };

  const orderBefore = (): readonly string[] => {
    const entries = desk.sheetOf(line.id)?.what.entries ?? [];
    return entries
      .filter(({ status }) => status === 'entered' || status === 'checked-in')
      .map(({ id }) => id);
  };

  const call = async () => {
    await desk.change(line, [{ kind: 'call' }]);
    say(t('gate-said-called', { number: line.number }));
  };

  return { setStatus, setOrder, call };
}

const isOfEntry = (change: Change, classEntryId: string): boolean =>
  change.kind === 'status' && change.classEntryId === classEntryId;
