import { z } from 'zod';

/** An id as it comes in: a UUID in any case, kept in small letters so that equal ids are equal texts. */
export const id = z.uuid('it must be an id: a UUID').toLowerCase();
