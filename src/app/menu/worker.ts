import { letNewerIn } from '../parts/letNewerIn.ts';
import { createAnswerer } from './answerer.ts';
import type { ShareAsked } from './messages.ts';

const answer = createAnswerer({ now: () => performance.now(), letNewerIn }, (told) => self.postMessage(told));

self.addEventListener('message', ({ data }: MessageEvent<ShareAsked>) => answer(data));
