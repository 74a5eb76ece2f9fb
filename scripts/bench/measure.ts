/** CPU time, not wall time: what else runs on the machine is not charged to us, though it still slows us down. */

/** CPU milliseconds of this process that some work takes. */
export function cpuMs(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const used = process.cpuUsage(before);
  return (used.user + used.system) / 1000;
}

/** The value that share of the others lies below: 0.5 is the median. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** Runs works by turns, so that whatever the machine is doing meets all of them alike: the median of each, in milliseconds. */
export function byTurns<Name extends string>(
  rounds: number,
  works: Readonly<Record<Name, (round: number) => number>>,
): Readonly<Record<string, number>> {
  const times = new Map<string, number[]>();
  for (let round = 0; round < rounds; round += 1) {
    for (const [name, work] of Object.entries<(round: number) => number>(works)) {
      times.set(name, [...(times.get(name) ?? []), work(round)]);
    }
  }
  return Object.fromEntries([...times].map(([name, list]) => [name, quantile(list, 0.5)]));
}

/** A number as it is told: three digits that count. */
export function told(value: number): string {
  if (!Number.isFinite(value)) return '–';
  if (value >= 1000) return Math.round(value).toLocaleString('en-US');
  return value.toPrecision(3);
}

/** A table in Markdown. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');
}
