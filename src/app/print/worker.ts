import { printSheets, type PrintInput } from '../../print/index.ts';

/** What comes back: the PDF, or why there is none. */
export type PrintAnswer =
  { readonly ok: true; readonly bytes: Uint8Array<ArrayBuffer> } | { readonly ok: false; readonly reason: string };

/** Writes PDFs away from the screen, so that a long print job does not hold it up. */
self.addEventListener('message', (event: MessageEvent<PrintInput>) => {
  void printSheets(event.data).then(
    (bytes) => answer({ ok: true, bytes: new Uint8Array(bytes) }),
    (error: unknown) => answer({ ok: false, reason: error instanceof Error ? error.message : String(error) }),
  );
});

function answer(message: PrintAnswer): void {
  self.postMessage(message);
}
