/**
 * Closes a `switch` over a tagged union: adding a member without handling it stops the compiler here.
 * Reaching it at run time is a broken promise inside the program, hence an exception.
 */
export function assertNever(value: never): never {
  throw new Error(`Unhandled case: ${JSON.stringify(value)}`);
}
