/** The page `/pair`: a phone makes its key, is paired by a code of the show office, and says whose it is now. */

import { keyPossible, whyNoKey } from '../shared/kept-key.ts';
import { showFault } from '../shared/show-fault.ts';
import { asWritten, codeInLink } from './code.ts';
import { codeField, readCode, refuseCode } from './code-field.ts';
import { type Found, letGo, pairWith, whoIsThis } from './pairing.ts';
import { element, say, show } from './screens.ts';
import { showPhone } from './show-phone.ts';

const pairButton = element('pair', HTMLButtonElement);
const dialog = element('let-go-dialog', HTMLDialogElement);

/** The code of the link that was opened; it does not stay in the address or the history. */
function takeCodeFromLink(): string {
  const code = codeInLink(location.hash);
  if (code !== '') history.replaceState(null, '', location.pathname);
  return code;
}

async function open(): Promise<void> {
  const code = takeCodeFromLink();
  if (!keyPossible()) return showNoKey();
  await showWhoThisIs(code);
}

async function showWhoThisIs(code = ''): Promise<void> {
  say('Asking the service …');
  const found = await whoIsThis();
  say('');
  showFound(found, code);
}

function showFound(found: Found, code: string): void {
  switch (found.is) {
    case 'paired':
      element('another-code', HTMLDivElement).hidden = code === '';
      showPhone(found.phone);
      show('paired');
      break;
    case 'not-paired':
      codeField.value = code;
      show('ask-code');
      refuseCode(found.because);
      break;
    case 'unknown':
      show('no-answer');
      showFault(element('no-answer-fault', HTMLDivElement), found.because);
  }
}

function showNoKey(): void {
  const { what, whatToDo } = whyNoKey();
  element('why-no-key', HTMLParagraphElement).textContent = what;
  element('instead-of-key', HTMLParagraphElement).textContent = whatToDo;
  show('no-key');
}

async function pair(): Promise<void> {
  const code = readCode();
  if (code === undefined) return;
  await busy(pairButton, async () => {
    say('Pairing …');
    const found = await pairWith(code);
    say('');
    if (found.is === 'paired') return showFound(found, '');
    refuseCode(found.because);
    codeField.focus();
  });
}

/** Nothing is sent twice by a second tap. */
async function busy(button: HTMLButtonElement, work: () => Promise<void>): Promise<void> {
  button.disabled = true;
  try {
    await work();
  } finally {
    button.disabled = false;
  }
}

codeField.addEventListener('input', () => {
  refuseCode(undefined);
  if (codeField.selectionStart === codeField.value.length) codeField.value = asWritten(codeField.value);
});
element('code-form', HTMLFormElement).addEventListener('submit', (event) => {
  event.preventDefault();
  void pair();
});
for (const id of ['look-again', 'try-again']) {
  const button = element(id, HTMLButtonElement);
  button.addEventListener('click', () => void busy(button, () => showWhoThisIs()));
}
element('let-go', HTMLButtonElement).addEventListener('click', () => dialog.showModal());
dialog.addEventListener('close', () => {
  if (dialog.returnValue === 'let-go') void letGo().then((found) => showFound(found, ''));
});
// A second link that is opened in the same window changes only what stands after the #.
window.addEventListener('hashchange', () => void open());

void open();
