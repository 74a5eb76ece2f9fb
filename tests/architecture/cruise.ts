import { join } from 'node:path';
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';
import extractOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';

/** The root of this repository. */
export const ROOT = join(import.meta.dirname, '../..');

/** What dependency-cruiser says of one tree of sources. */
export interface Cruised {
  /** How many files of `src` it read; packages are not counted. */
  readonly modules: number;
  /** One line for each broken rule, `rule: from -> to`, in order. */
  readonly violations: readonly string[];
}

/**
 * Checks the `src` folder under `baseDir` against this repository's own `.dependency-cruiser.cjs`.
 * @throws when the configuration cannot be read, or dependency-cruiser itself fails
 */
export async function cruiseSources(baseDir: string): Promise<Cruised> {
  const options: ICruiseOptions = await extractOptions(join(ROOT, '.dependency-cruiser.cjs'));
  const { output } = await cruise(['src'], { ...options, baseDir });
  if (typeof output === 'string') throw new Error('dependency-cruiser answered in words, not in modules.');
  return {
    modules: output.modules.filter((module) => module.source.startsWith('src/')).length,
    violations: output.summary.violations.map(lineOf).sort(),
  };
}

function lineOf(violation: ICruiseResult['summary']['violations'][number]): string {
  return `${violation.rule.name}: ${violation.from} -> ${violation.to}`;
}
