/**
 * Has the browser keep the page for when there is no network. Where it cannot (a private window, an address that is not
 * secure) everything else works as before, so a refusal is no news to the coach.
 */
export function workWithoutNetwork(): void {
  // Missing on pages that are not served from a secure address, whatever the type says. The development server has no such file.
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  void navigator.serviceWorker.register('./offline.js').catch(() => undefined);
}
