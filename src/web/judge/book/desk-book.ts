/** A card that is not signed yet: all of it is the desk's. */
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Go } from '../../../engine/sheets/types.ts';
import type { Desk } from '../desk/desk-types.ts';
import type { CardBook, Shut, Written } from './book.ts';

export function deskBook(desk: Desk, classId: string): CardBook {
  const goes = new Map<string, ReadonlySignal<Written<Go>>>();
  const order = desk.orderOf(classId);
  return {
    amends: false,
    shut: computed(() => shutOf(desk, classId)),
    content: desk.contentOf(classId),
    order: computed(() => ({ content: order.value.order, undoable: order.value.undoable })),
    goOf: (classEntryId) => {
      const known = goes.get(classEntryId);
      if (known !== undefined) return known;
      const kept = desk.goOf(classId, classEntryId);
      const written = computed(() => ({ content: kept.value.go, undoable: kept.value.undoable }));
      goes.set(classEntryId, written);
      return written;
    },
    writeGo: (classEntryId, change) => desk.writeGo(classId, classEntryId, change),
    writeOrder: (change) => desk.writeOrder(classId, change),
    undo: (classEntryId) => desk.undo(classId, classEntryId),
    undoOrder: () => desk.undoOrder(classId),
  };
}

function shutOf(desk: Desk, classId: string): Shut {
  if (desk.classOf(classId).value?.withdrawn === true) return 'withdrawn';
  const state = desk.stateOf(classId).value.is;
  return state === 'signed-on-this-phone' || state === 'signed-and-received' ? 'signed' : null;
}
