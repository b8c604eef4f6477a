import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { useWords } from '../../shared/words.tsx';
import { useWidth } from './use-width.ts';

interface PlotParts {
  readonly title: string;
  /** What the drawing shows, in a sentence: also for who cannot see it. */
  readonly sentence: string;
  readonly height: number;
  readonly draw: (width: number) => ComponentChildren;
  /** The same as a table. */
  readonly table: ComponentChildren;
}

/** A drawing with its sentence under the head and its table folded up below. */
export function Plot({ title, sentence, height, draw, table }: PlotParts) {
  const { t } = useWords();
  const id = useId();
  const { place, width } = useWidth<HTMLDivElement>();
  return (
    <figure class="plot">
      <h3>{title}</h3>
      <figcaption id={`${id}-says`}>{sentence}</figcaption>
      <div ref={place} class="drawn">
        <svg
          role="img"
          aria-label={title}
          aria-describedby={`${id}-says`}
          viewBox={`0 0 ${width} ${height}`}
          width={width}
          height={height}
        >
          {draw(width)}
        </svg>
      </div>
      <details>
        <summary>{t('office-closeness-as-table')}</summary>
        {table}
      </details>
    </figure>
  );
}
