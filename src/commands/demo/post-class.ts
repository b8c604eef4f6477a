/** The office posts what the preview shows. */
import type { Api, Sends } from './api.ts';

interface Office {
  readonly api: Api;
  readonly secretary: Sends;
}

interface Posting {
  readonly classId: string;
  readonly state: 'provisional' | 'official' | 'corrected';
  readonly reason?: string;
}

/** Reads the preview and posts it, so that nothing is posted unseen. */
export async function postClass(
  { api, secretary: as }: Office,
  { classId, ...body }: Posting,
): Promise<void> {
  const { etag } = await api.ask({ method: 'GET', path: `/classes/${classId}/tabulation`, as });
  await api.ask({ method: 'POST', path: `/classes/${classId}/postings`, as, ifMatch: etag, body });
}
