/**
 * The document's shapes are the engine's own, both ways round: a field added on one side only stops `tsc`, which compiles
 * this file. At run time these lines do nothing.
 */
import { expectTypeOf, it } from 'vitest';
import type { DeepReadonly, Playbook } from '../../src/document/schema/playbook.ts';
import type { Call, CheckOut, Coverage, Front, Look, Pressure, Role, StaffWord } from '../../src/engine/index.ts';

interface EngineParts {
  readonly roles: readonly Role[];
  readonly fronts: readonly Front[];
  readonly coverages: readonly Coverage[];
  readonly looks: readonly Look[];
  readonly pressures: readonly Pressure[];
  readonly calls: readonly Call[];
  readonly checkOuts: readonly CheckOut[];
  readonly dictionary: readonly StaffWord[];
}

/** One part of each, written out the same way, so that only what they hold can differ. */
type OfDocument<Part extends keyof EngineParts> = DeepReadonly<Playbook[Part]>;
type OfEngine<Part extends keyof EngineParts> = DeepReadonly<EngineParts[Part]>;

it('every part that the engine works with has the same shape in a file', () => {
  expectTypeOf<OfDocument<'roles'>>().toEqualTypeOf<OfEngine<'roles'>>();
  expectTypeOf<OfDocument<'fronts'>>().toEqualTypeOf<OfEngine<'fronts'>>();
  expectTypeOf<OfDocument<'coverages'>>().toEqualTypeOf<OfEngine<'coverages'>>();
  expectTypeOf<OfDocument<'looks'>>().toEqualTypeOf<OfEngine<'looks'>>();
  expectTypeOf<OfDocument<'pressures'>>().toEqualTypeOf<OfEngine<'pressures'>>();
  expectTypeOf<OfDocument<'calls'>>().toEqualTypeOf<OfEngine<'calls'>>();
  expectTypeOf<OfDocument<'checkOuts'>>().toEqualTypeOf<OfEngine<'checkOuts'>>();
  expectTypeOf<OfDocument<'dictionary'>>().toEqualTypeOf<OfEngine<'dictionary'>>();
});

it('a difference would be seen: another field, a field that may be missing, another word', () => {
  expectTypeOf<OfDocument<'calls'>>().not.toEqualTypeOf<DeepReadonly<readonly (Call & { readonly day: number })[]>>();
  expectTypeOf<OfDocument<'calls'>>().not.toEqualTypeOf<DeepReadonly<readonly Omit<Call, 'turn'>[]>>();
  expectTypeOf<DeepReadonly<Call>>().not.toEqualTypeOf<
    DeepReadonly<Omit<Call, 'turn'> & Partial<Pick<Call, 'turn'>>>
  >();
  expectTypeOf<Call['turn']>().not.toEqualTypeOf<Call['turn'] | 'none'>();
});
