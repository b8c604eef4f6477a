/** The field into which the code is typed. */
import type { FaultWords } from '../shared/fault-words.ts';
import { showFault } from '../shared/show-fault.ts';
import { asWritten, isWhole } from './code.ts';
import { element } from './screens.ts';

export const codeField = element('code', HTMLInputElement);
const faultPlace = element('code-fault', HTMLDivElement);

/** `undefined` where it is not whole; it says so itself. */
export function readCode(): string | undefined {
  const code = asWritten(codeField.value);
  codeField.value = code;
  if (isWhole(code)) return code;
  refuseCode({
    what: 'The code is not whole.',
    whatToDo: 'It has eight letters and digits, like XK7P-4M2Q.',
  });
  codeField.focus();
  return undefined;
}

/** `undefined` takes the refusal back. */
export function refuseCode(fault: FaultWords | undefined): void {
  if (fault === undefined) codeField.removeAttribute('aria-invalid');
  else codeField.setAttribute('aria-invalid', 'true');
  showFault(faultPlace, fault);
}
