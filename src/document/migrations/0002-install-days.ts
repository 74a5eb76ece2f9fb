import { ok } from '../../base/index.ts';
import { eachOf } from './eachOf.ts';
import type { Migration } from './migration.ts';

/**
 * Version 3 knows the day of camp a pressure or a call is put in, and tags of calls. A file of version 2 never said either:
 * no day, no tags. An entry that version 2 did not have stays as it is, and the schema judges it.
 */
export const installDays: Migration = {
  from: 2,
  name: 'install days of pressures and calls, tags of calls',
  up: (playbook) =>
    ok({
      ...playbook,
      pressures: eachOf(playbook['pressures'], (pressure) => ({ installDay: null, ...pressure })),
      calls: eachOf(playbook['calls'], (call) => ({ tags: [], installDay: null, ...call })),
    }),
};
