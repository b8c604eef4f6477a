/**
 * An archive that may be handed to anyone for checking: without names, days of birth, videos, and what the office wrote
 * about people. What is signed or hashed stays, whatever stands in it: a judge's remark on a card, why a card was
 * amended, who ruled and why, the reason of a posting. Evidence without its words would be no evidence.
 */
import type { ShowRecords } from './read-show.ts';

export function withoutNames(records: ShowRecords): ShowRecords {
  return {
    ...records,
    people: records.people.map((person) => ({ ...person, name: null })),
    exhibitors: records.exhibitors.map((exhibitor) => ({
      ...exhibitor,
      ...{ name: null, bornOn: null, spokenAs: null },
    })),
    horses: records.horses.map((horse) => ({
      ...horse,
      ...{ name: null, registrationNumber: null, spokenAs: null },
    })),
    owners: records.owners.map((owner) => ({ ...owner, name: null })),
    seats: records.seats.map((seat) => ({ ...seat, withdrawnWhy: null })),
    classEntries: records.classEntries.map((entry) => ({ ...entry, statusReason: null, videoUrl: null })),
    relations: records.relations.map((relation) => ({ ...relation, reason: null })),
    draws: records.draws.map((draw) => ({ ...draw, reason: null })),
    phones: records.phones.map((phone) => ({ ...phone, label: null, revokedWhy: null })),
    paperCards: records.paperCards.map((card) => ({ ...card, withdrawnWhy: null })),
    // Handwriting and whatever else is on the paper; its fingerprint stays.
    paperPhotos: records.paperPhotos.map((photo) => ({ ...photo, bytes: null })),
  };
}
