/** Pairing a phone, and what a paired phone must prove with each request. */
export const phoneProblems = {
  pairing_code_unknown: {
    status: 422,
    title: 'There is no such code',
    whatToDo: 'Read the code again, or scan the QR code. It looks like XK7P-4M2Q.',
  },
  pairing_code_used: {
    status: 409,
    title: 'Another phone was paired with that code',
    whatToDo: 'Ask the show office for a new code, and tell it if the other phone is not yours.',
  },
  pairing_code_ended: {
    status: 410,
    title: 'The code has ended, or the office took it back',
    whatToDo: 'Ask the show office for a new code.',
  },
  pairing_slowed: {
    status: 429,
    title: 'Too many wrong codes from one place',
    whatToDo: 'Wait as long as the header "Retry-After" says, then read the code again.',
  },
  key_already_paired: {
    status: 409,
    title: 'The key of this phone is paired already',
    whatToDo: 'Make a new key pair for each pairing.',
  },
  invitation_used: {
    status: 409,
    title: 'A phone took up the invitation',
    whatToDo: 'Revoke that phone instead; it is named under "phoneId".',
  },
  proof_missing: {
    status: 401,
    title: 'A proof of possession is needed',
    whatToDo: 'Send the header "DPoP" with a proof signed by the key of the phone (RFC 9449).',
  },
  proof_nonce_needed: {
    status: 401,
    title: 'The proof must name the present nonce',
    whatToDo: 'Sign a new proof with the nonce of the header "DPoP-Nonce" of this answer.',
  },
  proof_invalid: {
    status: 401,
    title: 'The proof of possession does not hold',
    whatToDo:
      'Sign a new proof for this method, this address and this token; what is wrong stands under "detail".',
  },
  proof_replayed: {
    status: 401,
    title: 'The proof was used before',
    whatToDo: 'Sign a new proof, with a new "jti", for each request.',
  },
  phone_unknown: {
    status: 401,
    title: 'No phone is paired with that key',
    whatToDo: 'Pair the phone with a code of the show office.',
  },
  phone_revoked: {
    status: 401,
    title: 'The office took the phone off the show',
    whatToDo: 'Ask the show office for a new code and pair again. What was written is kept.',
  },
} as const;
