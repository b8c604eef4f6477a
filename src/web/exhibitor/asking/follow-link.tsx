/** The link with which the answer is read on another device. What makes it work stands behind the `#`. */
import { useId, useState } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { type FollowedCode, followLink } from './followed-codes.ts';

export function FollowLink({ followed }: { readonly followed: FollowedCode }) {
  const { t } = useWords();
  const id = useId();
  const [copied, setCopied] = useState<'copied' | 'by-hand'>();
  const link = followLink(followed);
  const copy = () =>
    navigator.clipboard.writeText(link).then(
      () => setCopied('copied'),
      () => setCopied('by-hand'),
    );
  return (
    <details class="follow">
      <summary>{t('exhibitor-follow')}</summary>
      <p id={id} class="note">
        {t('exhibitor-follow-what')}
      </p>
      <input
        readOnly
        value={link}
        aria-label={t('exhibitor-follow')}
        aria-describedby={id}
        onFocus={(event) => event.currentTarget.select()}
      />
      <button type="button" onClick={() => void copy()}>
        {t('exhibitor-follow-copy')}
      </button>
      <p role="status">{copied !== undefined && t(`exhibitor-follow-${copied}`)}</p>
    </details>
  );
}
