/** A time or a distance as it is told: an estimate is not good for more than a tenth. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
