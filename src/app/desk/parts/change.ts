/**
 * Called with the whole new value. `gesture` joins what is typed into one field to one step of the history; null: a step of
 * its own.
 */
export type Change<Value> = (value: Value, gesture: string | null) => void;
