/** Passes for the people of the demo. */
import type { Api } from './api.ts';

interface WantedPass {
  readonly showId: string;
  readonly role: 'office' | 'judge' | 'scribe' | 'gate';
  readonly seatId?: string;
  readonly label: string;
}

/** The office's pass hands out the others. */
export async function handOutPass(api: Api, officePass: string, wanted: WantedPass): Promise<string> {
  const { showId, ...body } = wanted;
  const { body: issued } = await api.ask<{ token: string }>({
    method: 'POST',
    path: `/shows/${showId}/tokens`,
    pass: officePass,
    body,
  });
  return issued.token;
}
