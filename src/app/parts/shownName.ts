/** A name as it is shown: a file may leave it empty. */
export function shownName(name: string): string {
  return name === '' ? '(no name)' : name;
}
