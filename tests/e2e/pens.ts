/** A pen and the hand that holds it, as the browser tells them apart: what Playwright's own mouse and touch screen cannot do. */
import type { Page } from '@playwright/test';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A pen that touches the screen and leaves it, and a hand that rests beside it. All in pixels of the page. */
export interface Pen {
  readonly down: (at: Spot) => Promise<void>;
  readonly move: (at: Spot) => Promise<void>;
  readonly up: (at: Spot) => Promise<void>;
  /** The hand comes to rest on the screen. */
  readonly restHand: (at: Spot) => Promise<void>;
  readonly liftHand: () => Promise<void>;
}

/** A pen on a page; resting a hand needs a screen that can be touched. */
export async function penOn(page: Page): Promise<Pen> {
  const client = await page.context().newCDPSession(page);
  const pen = async (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', { x, y }: Spot): Promise<void> => {
    const buttons = type === 'mouseReleased' ? 0 : 1;
    await client.send('Input.dispatchMouseEvent', {
      type,
      x,
      y,
      button: 'left',
      buttons,
      clickCount: 1,
      force: buttons / 2,
      pointerType: 'pen',
    });
  };
  return {
    down: (at) => pen('mousePressed', at),
    move: (at) => pen('mouseMoved', at),
    up: (at) => pen('mouseReleased', at),
    restHand: async ({ x, y }) => {
      await client.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y, radiusX: 20 }] });
    },
    liftHand: async () => {
      await client.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    },
  };
}
