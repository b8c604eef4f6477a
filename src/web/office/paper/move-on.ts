/** Enter moves on from field to field, Shift+Enter back; the arrows go to the same field of the go above or below. */

/** On every field that the keys walk through. */
export const typedField = 'data-typed';

export function moveOn(event: KeyboardEvent): void {
  const form = event.currentTarget;
  const field = event.target;
  if (!(form instanceof HTMLElement) || !(field instanceof HTMLElement) || !field.hasAttribute(typedField))
    return;
  const next = nextOf(event, form, field);
  if (next === undefined) return;
  event.preventDefault();
  focusOn(next);
}

function nextOf(event: KeyboardEvent, form: HTMLElement, field: HTMLElement): HTMLElement | undefined {
  const all = [...form.querySelectorAll<HTMLElement>(`[${typedField}]`)];
  const at = all.indexOf(field);
  if (event.key === 'Enter') return all[at + (event.shiftKey ? -1 : 1)];
  if (field instanceof HTMLSelectElement) return undefined;
  const same = all.filter((one) => one.getAttribute(typedField) === field.getAttribute(typedField));
  if (event.key === 'ArrowDown') return same[same.indexOf(field) + 1];
  return event.key === 'ArrowUp' ? same[same.indexOf(field) - 1] : undefined;
}

/** With what stands in it chosen, so that typing writes over it. */
export function focusOn(field: HTMLElement): void {
  field.focus();
  if (field instanceof HTMLInputElement) field.select();
}

/** Id of a field, for links to it from a list of faults or differences. */
export const fieldId = (entry: string, key: string): string => `typed-${entry}-${key}`;

export function goToField(entry: string, key: string): void {
  const field = document.getElementById(fieldId(entry, key));
  if (field === null) return;
  // Remarks stand in a part of the go that is folded up.
  const folded = field.closest('details');
  if (folded !== null) folded.open = true;
  focusOn(field);
}
