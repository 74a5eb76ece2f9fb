import { useId, useState, type ReactElement } from 'react';

interface Props {
  readonly tags: readonly string[];
  readonly disabled: boolean;
  readonly onTags: (tags: readonly string[]) => void;
}

/** Tags as one line of text with commas; kept on Enter, or when the field is left. */
export function TagsField({ tags, disabled, onTags }: Props): ReactElement {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const now = tags.join(', ');
  const keep = (): void => {
    if (draft !== null && draft !== now) onTags(draft.split(','));
    setDraft(null);
  };
  return (
    <div className="field is-wide-field">
      <label htmlFor={id}>Tags</label>
      <input
        id={id}
        type="text"
        value={draft ?? now}
        disabled={disabled}
        aria-describedby={`${id}-hint`}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === 'Enter') keep();
          if (event.key === 'Escape') setDraft(null);
        }}
      />
      <p className="hint" id={`${id}-hint`}>
        Your own words, with commas between them; they help to find it.
      </p>
    </div>
  );
}
