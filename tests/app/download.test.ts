import { describe, expect, it } from 'vitest';
import { fileStem } from '../../src/app/files/download.ts';

describe('the name of a file', () => {
  it.each([
    [['Alderfen Herons'], 'alderfen-herons'],
    [['Alderfen Herons', 'Reed / Weir!'], 'alderfen-herons-reed-weir'],
    [['Brøndby Élan'], 'br-ndby-elan'],
    [['../../etc'], 'etc'],
    [['  '], 'playbook'],
    [['x'.repeat(100)], 'x'.repeat(60)],
  ])('%j is %s', (names, stem) => {
    expect(fileStem(...names)).toBe(stem);
  });
});
