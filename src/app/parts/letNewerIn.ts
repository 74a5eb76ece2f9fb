/** For a worker between two pieces of work: what was asked meanwhile waits in the queue of messages, and is read now. */
export function letNewerIn(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve);
  });
}
