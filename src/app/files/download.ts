/** How long a download may take to be picked up by the browser before its address goes, in milliseconds. */
const PICK_UP = 60_000;

/** Hands bytes to the coach as a file. All of them are there before the browser is asked to save. */
export function download(name: string, bytes: Uint8Array<ArrayBuffer>, type: string): void {
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), PICK_UP);
}

/** A name that every file system takes: "Alderfen Herons" becomes "alderfen-herons". */
export function fileStem(...names: readonly string[]): string {
  const stem = names
    .join(' ')
    .normalize('NFKD')
    // Accents now stand behind their letters as marks of their own.
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return stem === '' ? 'playbook' : stem;
}
