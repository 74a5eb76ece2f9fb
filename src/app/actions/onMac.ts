/** Whether this machine has Apple's keys. The same test as tinykeys makes for `$mod`. */
export function onMac(): boolean {
  return /Mac|iPod|iPhone|iPad/.test(navigator.platform);
}
