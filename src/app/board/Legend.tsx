import { useState, type ReactElement } from 'react';
import { LEGEND } from '../../editor/index.ts';
import { isRoomy } from '../parts/roomy.ts';
import { LIGHT_THEME, toSvg } from '../../scene/index.ts';

/** Width of a little picture, in CSS pixels. */
const PICTURE = 40;

const PICTURES = LEGEND.map(({ key, words, picture }) => {
  const svg = toSvg(picture, LIGHT_THEME, { flip: false, width: PICTURE });
  return { key, words, address: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}` };
});

/** What the lines and boxes on the field mean; folded at first where the field needs the room. */
export function Legend(): ReactElement {
  const [open] = useState(isRoomy);
  return (
    <details className="legend" open={open}>
      <summary>What the lines mean</summary>
      <ul>
        {PICTURES.map(({ key, words, address }) => (
          <li key={key}>
            <img src={address} alt="" width={PICTURE} /> {words}
          </li>
        ))}
      </ul>
    </details>
  );
}
