/** The judge's page without its screens: what tests ask of the desk, they ask of this. */
import { makePhoneKey, PhoneClient } from '../../../../src/phone/index.ts';
import { letGoOfPhone } from '../../../../src/web/judge/desk/let-go.ts';
import { openDesk } from '../../../../src/web/judge/desk/open-desk.ts';
import { forgetKey, keepKey } from '../../../../src/web/shared/kept-key.ts';

async function pair(code: string): Promise<number> {
  const key = await makePhoneKey();
  await keepKey(key);
  return (await new PhoneClient(location.origin, key).pair(code)).status;
}

/** Which build this is: the test of a newer version builds it with another word. */
declare const wordOfBuild: string;

Object.assign(window, { desk: await openDesk(), pair, forgetKey, letGoOfPhone, wordOfBuild });
document.title = 'Desk is open';
