declare const brandOf: unique symbol;

/** A plain value that must not be mixed up with others of the same run-time type. */
export type Brand<Value, Name extends string> = Value & { readonly [brandOf]: Name };

/** Makes the constructor of one brand; the only place where a plain value becomes a branded one. */
export function brander<Value, Name extends string>(): (value: Value) => Brand<Value, Name> {
  return (value) => value as Brand<Value, Name>;
}
