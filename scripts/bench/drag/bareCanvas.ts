/**
 * The yardstick of `main.ts`, run in a page of its own: every move of the pointer paints one of the scenes of the same drag
 * on a bare canvas, and does nothing else.
 */
import { paintScene } from '../../../src/editor/paint/paintScene.ts';
import type { Viewport } from '../../../src/editor/viewport.ts';
import { LIGHT_THEME, type Scene } from '../../../src/scene/index.ts';

declare global {
  interface Window {
    startBare: (scenes: readonly Scene[], viewport: Viewport, size: { width: number; height: number }) => void;
  }
}

window.startBare = (scenes, viewport, size) => {
  const canvas = document.createElement('canvas');
  canvas.width = size.width;
  canvas.height = size.height;
  document.body.append(canvas);
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('This browser draws nothing');
  let moves = 0;
  let waiting = false;
  canvas.addEventListener('pointermove', () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      moves += 1;
      const scene = scenes[moves % scenes.length];
      pen.clearRect(0, 0, size.width, size.height);
      if (scene !== undefined) paintScene(pen, scene, LIGHT_THEME, viewport);
    });
  });
};
