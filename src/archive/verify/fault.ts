/** What may be wrong with an archive: a stable code, where, and a sentence. */

export const faultSentences = {
  form_unknown: 'This is not an archive of the form that is read here, ringledger show archive 1.',
  form_broken: 'The archive does not have the form that api-docs/archive.schema.json describes.',
  archive_key_unknown: 'The archive is signed by a key that is not known.',
  archive_signature_wrong: "The service's signature over the archive does not hold.",
  archive_altered: 'The archive is not the one that the service signed: something in it was changed.',
  key_thumbprint_wrong: 'A public key of the service is not the one that its thumbprint names.',
  line_missing: 'A line of the ledger is missing, or stands in another place.',
  line_not_linked: 'A line of the ledger does not carry the hash of the line before.',
  line_hash_wrong: 'A line of the ledger is not the one that was hashed.',
  line_key_unknown: 'A line of the ledger is sealed by a key that is not known.',
  line_seal_wrong: 'The seal of a line of the ledger does not hold.',
  line_sealed_by_import:
    'A line is sealed by a key of the service that the show came from, after it had come.',
  head_missing: 'The ledger ends before the line that was written down.',
  head_differs: 'The ledger has another line than the one that was written down.',
  archive_head_wrong: 'The head that the archive names is not the last line of its ledger.',
  record_doubled: 'Two records have one id.',
  record_refers_to_nothing: 'A record names another that is not in the archive.',
  record_without_line: 'A record is there that the ledger does not know.',
  line_names_nothing: 'The ledger tells of a record that is not in the archive.',
  sheet_altered: 'A score sheet is not the one that its fingerprint names.',
  show_line_differs: "The show is not as the ledger's lines about it say.",
  class_line_differs: "A class was not opened when the ledger's line says.",
  consent_line_differs: "A consent is not as the ledger's line about it says.",
  public_name_without_consent: "An exhibitor's name is public in another form than the last consent allows.",
  entry_line_differs: "An entry is not as the ledger's last line about it says.",
  seat_line_differs: "A judge has left a panel, or sits on it, otherwise than the ledger's lines say.",
  phone_thumbprint_wrong: 'The public key of a phone is not the one that its thumbprint names.',
  phone_line_differs: "A phone is not as the ledger's lines about it say.",
  card_unsigned: 'A revision of a card has neither the signature of a phone nor a paper card.',
  card_phone_unknown: 'A card is signed by a phone that is not in the archive.',
  card_phone_of_another: "A card is signed by a phone that was not the judge's of that seat.",
  card_phone_not_paired: 'A card came in from a phone before it was paired, or after it was revoked.',
  card_signature_wrong: "The signature of a card is not by the key of the judge's phone.",
  card_differs: 'A card on record is not the card that the judge signed.',
  card_hash_wrong: 'A card is not the one that its fingerprint names.',
  card_chain_broken: 'A revision of a card does not follow the one before.',
  card_line_differs: "A card is not as the ledger's line about it says.",
  paper_one_account: 'A paper card was not entered by two different people.',
  paper_entries_differ: 'The two entries of a paper card are not the same.',
  paper_differs: 'A card on record is not the paper card that two people entered.',
  paper_photo_altered: 'The photo of a paper card is not the one that its fingerprint names.',
  paper_line_differs: "A paper card is not as the ledger's line about it says.",
  ruling_line_differs: "A ruling is not as the ledger's line about it says.",
  posting_key_unknown: 'A posting is signed by a key that is not known.',
  posting_signature_wrong: "The service's signature of a posting does not hold.",
  posting_differs: 'A posting on record is not the posting that the service signed.',
  posting_hash_wrong: 'The body of a posting is not the one that its fingerprint names.',
  posting_rule_hash_wrong: 'The rule and the sheet of a posting are not the ones that its fingerprint names.',
  posting_chain_broken: 'A posting is missing between two of one class.',
  posting_head_wrong: 'The head of the ledger that a posting names is not the line before its own.',
  posting_line_differs: "A posting is not as the ledger's line about it says.",
  posting_cards_wrong: 'A posting was not made from the last signed cards of the panel.',
  posting_decisions_wrong: 'A posting was not made with the rulings that had been recorded.',
  posting_not_computable: 'A posting cannot be computed from what it names.',
  posting_recomputed_differs: 'Computed anew from its cards and its rule, a posting says something else.',
} as const;

export type FaultCode = keyof typeof faultSentences;

export interface Fault {
  readonly code: FaultCode;
  /** Which record: `line 12`, `card 0198... revision 2`. */
  readonly at: string;
  /** One sentence, and where it helps which members differ. Ids and numbers, never names. */
  readonly message: string;
}

export const fault = (code: FaultCode, at: string, detail?: string): Fault => ({
  code,
  at,
  message: detail === undefined ? faultSentences[code] : `${faultSentences[code]} (${detail})`,
});
