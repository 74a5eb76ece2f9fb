export { assertNever } from './assertNever.ts';
export { brander, type Brand } from './brand.ts';
export { compareBy } from './compare.ts';
export { remembered } from './remembered.ts';
export { ok, refused, type Result } from './result.ts';
