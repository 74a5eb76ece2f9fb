import type { ReactElement } from 'react';
import { THEME_CHOICES, THEME_WORDS } from './choice.ts';
import { useThemeChoice } from './useTheme.ts';

/** How the page looks. The list lies, unseen, over a small picture of a half-dark disc, so that it takes little of the head. */
export function ThemeSelect(): ReactElement {
  const { choice, choose } = useThemeChoice();
  return (
    <label className="theme-select" title={`Light or dark: ${THEME_WORDS[choice]}`}>
      <svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true" focusable="false">
        <circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" strokeWidth="2" />
        <path d="M10 2a8 8 0 0 1 0 16z" fill="currentColor" />
      </svg>
      <select
        aria-label="Light or dark"
        value={choice}
        onChange={(event) => {
          const next = THEME_CHOICES.find((each) => each === event.target.value);
          if (next !== undefined) choose(next);
        }}
      >
        {THEME_CHOICES.map((each) => (
          <option key={each} value={each}>
            {THEME_WORDS[each]}
          </option>
        ))}
      </select>
    </label>
  );
}
