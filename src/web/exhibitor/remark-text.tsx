/**
 * A judge's remark. A time that she stamped into it while she watched a video, "[1:23] soft hands", is set off, so that
 * the family finds the moment in its own video of the go.
 */
import { useWords } from '../shared/words.tsx';

const stamp = /\[((?:\d{1,2}:)?[0-5]?\d:[0-5]\d)\]/;

export const hasStamp = (remark: string): boolean => stamp.test(remark);

export function RemarkText({ remark }: { readonly remark: string }) {
  const { t } = useWords();
  // Every other part is what the brackets hold.
  const parts = remark.split(stamp);
  return (
    <>
      {parts.map((part, at) =>
        at % 2 === 0 ? (
          part
        ) : (
          <span key={at} class="stamp">
            <span class="heard">{t('exhibitor-stamp', { time: part })}</span>
            <time class="figures" dateTime={durationOf(part)} aria-hidden="true">
              {part}
            </time>
          </span>
        ),
      )}
    </>
  );
}

/** `1:23` is `PT1M23S` (HTML, 2.3.5.8). */
function durationOf(time: string): string {
  const [seconds = '0', minutes = '0', hours] = time.split(':').reverse();
  return `PT${hours === undefined ? '' : `${Number(hours)}H`}${Number(minutes)}M${Number(seconds)}S`;
}
