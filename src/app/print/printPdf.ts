import boldUrl from '@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-700-normal.woff?url';
import regularUrl from '@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff?url';
import type { PrintInput, SheetFonts } from '../../print/index.ts';
import type { PrintAnswer } from './worker.ts';

/** The typeface of the sheets, from the app's own files. */
export async function loadFonts(): Promise<SheetFonts> {
  const [regular, bold] = await Promise.all([bytesAt(regularUrl), bytesAt(boldUrl)]);
  return { regular, bold };
}

/** Makes the PDF in a worker, which is loaded only now. Rejects with the reason when it cannot be made. */
export function printPdf(input: PrintInput): Promise<Uint8Array<ArrayBuffer>> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  const made = new Promise<Uint8Array<ArrayBuffer>>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<PrintAnswer>) => {
      if (data.ok) resolve(data.bytes);
      else reject(new Error(data.reason));
    });
    worker.addEventListener('error', (event) => reject(new Error(event.message)));
  });
  worker.postMessage(input);
  return made.finally(() => worker.terminate());
}

async function bytesAt(url: string): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`The typeface could not be read (${response.status})`);
  return new Uint8Array(await response.arrayBuffer());
}
