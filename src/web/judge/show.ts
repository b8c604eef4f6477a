/** The show that this phone is paired for. */
import type { DayPhone } from './desk/day-types.ts';
import { useParts } from './parts.tsx';

export function usePhone(): DayPhone | undefined {
  const day = useParts().desk.day.value;
  return day.is === 'here' || day.is === 'revoked' ? day.day.phone : undefined;
}

/** Every time is shown in the show's zone. */
export const useTimeZone = (): string => usePhone()?.show.timeZone ?? 'UTC';
