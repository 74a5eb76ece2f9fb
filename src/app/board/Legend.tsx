import { useState, type ReactElement } from 'react';
import { isRoomy, isTall } from '../parts/roomy.ts';
import { useTheme } from '../theme/useTheme.ts';
import { LEGEND, legendOf, SCREEN_THEMES, toSvg, type Scene, type Theme } from '../../scene/index.ts';

/** Width of a little picture, in CSS pixels. */
const PICTURE = 36;

/** The little pictures of each theme, by what they mean. */
const PICTURES = new Map<Theme, ReadonlyMap<string, string>>(
  Object.values(SCREEN_THEMES).map((theme) => [
    theme,
    new Map(
      LEGEND.map(({ text, scene }) => {
        const svg = toSvg(scene, theme, { flip: false, width: PICTURE });
        return [text, `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`];
      }),
    ),
  ]),
);

/** What the lines and signs on the field mean, as far as they are there; folded at first where the field needs the room. */
export function Legend({ scene }: { readonly scene: Scene }): ReactElement {
  const [open] = useState(() => isRoomy() && isTall());
  const pictures = PICTURES.get(useTheme());
  return (
    <details className="legend" open={open}>
      <summary>What the lines mean</summary>
      <ul>
        {legendOf(scene).map(({ text }) => (
          <li key={text}>
            <img src={pictures?.get(text)} alt="" width={PICTURE} /> {text}
          </li>
        ))}
      </ul>
    </details>
  );
}
