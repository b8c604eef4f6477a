import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';

interface FieldHead {
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong with it, beside it. */
  readonly fault?: string | undefined;
}

type InputField = FieldHead & {
  readonly value: string;
  readonly onValue: (value: string) => void;
} & Omit<JSX.IntrinsicElements['input'], 'value' | 'id' | 'onInput' | 'label'>;

/** A labelled line to write on. Anything that an `<input>` takes goes through: `autocomplete`, `inputMode` ... */
export function Field({ label, hint, fault, value, onValue, ...more }: InputField) {
  const id = useId();
  return (
    <FieldFrame {...{ id, label, hint, fault }}>
      <input
        {...more}
        id={id}
        value={value}
        aria-describedby={describedBy(id, { hint, fault })}
        aria-invalid={fault !== undefined}
        onInput={({ currentTarget }) => onValue(currentTarget.value)}
      />
    </FieldFrame>
  );
}

type TextField = FieldHead & {
  readonly value: string;
  readonly onValue: (value: string) => void;
} & Omit<JSX.IntrinsicElements['textarea'], 'value' | 'id' | 'onInput' | 'label'>;

/** For a reason or an answer: a few lines. */
export function TextField({ label, hint, fault, value, onValue, ...more }: TextField) {
  const id = useId();
  return (
    <FieldFrame {...{ id, label, hint, fault }}>
      <textarea
        rows={3}
        {...more}
        id={id}
        value={value}
        aria-describedby={describedBy(id, { hint, fault })}
        aria-invalid={fault !== undefined}
        onInput={({ currentTarget }) => onValue(currentTarget.value)}
      />
    </FieldFrame>
  );
}

type ChoiceField<Value extends string> = FieldHead & {
  readonly value: Value;
  readonly onValue: (value: Value) => void;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly disabled?: boolean;
};

export function ChoiceField<Value extends string>(field: ChoiceField<Value>) {
  const { label, hint, fault, value, onValue, choices, disabled = false } = field;
  const id = useId();
  const pick = (picked: string) => {
    const choice = choices.find((one) => one.value === picked);
    if (choice !== undefined) onValue(choice.value);
  };
  return (
    <FieldFrame {...{ id, label, hint, fault }}>
      <select
        id={id}
        value={value}
        disabled={disabled}
        aria-describedby={describedBy(id, { hint, fault })}
        onChange={({ currentTarget }) => pick(currentTarget.value)}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}

interface Frame extends FieldHead {
  readonly id: string;
  readonly children: ComponentChildren;
}

const FieldFrame = ({ id, label, hint, fault, children }: Frame) => (
  <div class="field">
    <label for={id}>{label}</label>
    {children}
    {hint !== undefined && (
      <p class="note" id={`${id}-hint`}>
        {hint}
      </p>
    )}
    {fault !== undefined && (
      <p class="field-fault" id={`${id}-fault`}>
        {fault}
      </p>
    )}
  </div>
);

function describedBy(id: string, { hint, fault }: Pick<FieldHead, 'hint' | 'fault'>): string | undefined {
  const ids = [
    ...(hint === undefined ? [] : [`${id}-hint`]),
    ...(fault === undefined ? [] : [`${id}-fault`]),
  ];
  return ids.length === 0 ? undefined : ids.join(' ');
}
