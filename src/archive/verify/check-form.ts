/** Is it an archive at all? Nothing else is looked at before. */
import { type Archive, archive, archiveForm } from '../form/archive.ts';
import { isPlain } from '../form/plain.ts';
import { type Fault, fault } from './fault.ts';

export type FormRead =
  | { readonly ok: true; readonly archive: Archive }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const toldAtMost = 20;

export function checkForm(value: unknown): FormRead {
  if (!isPlain(value)) return refused(fault('form_broken', '/', 'nested too deep, or with a forbidden name'));
  if (formOf(value) !== archiveForm) return refused(fault('form_unknown', '/form'));
  const read = archive.safeParse(value);
  if (read.success) return { ok: true, archive: read.data };
  const faults = read.error.issues.slice(0, toldAtMost).map(({ path, message }) => {
    return fault('form_broken', `/${path.map(String).join('/')}`, message);
  });
  return { ok: false, faults };
}

const refused = (one: Fault): FormRead => ({ ok: false, faults: [one] });

const formOf = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && 'form' in value ? value.form : undefined;
