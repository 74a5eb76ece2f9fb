export { assertNever } from './assertNever.ts';
export { brander, type Brand } from './brand.ts';
export { compareBy, firstInOrder } from './compare.ts';
export { remembered, rememberedLast } from './remembered.ts';
export { gather } from './gather.ts';
export { createNumbering, type Numbering } from './numbering.ts';
export { ok, refused, type Result } from './result.ts';
