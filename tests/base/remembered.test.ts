import { describe, expect, it } from 'vitest';
import { remembered, rememberedLast } from '../../src/base/index.ts';

/** A function that counts how often it really works. */
function counted() {
  let worked = 0;
  const work = (first: { readonly name: string }, second: object | null, third: string): string => {
    worked += 1;
    return `${first.name} ${second === null ? 'nobody' : 'somebody'} ${third}`;
  };
  return { ask: remembered(work), worked: () => worked };
}

const [nose, end] = [{ name: 'nose' }, { name: 'end' }];

describe('remembered', () => {
  it('works once for the same arguments, objects being the same only if they are one', () => {
    const { ask, worked } = counted();
    expect([ask(nose, end, 'a'), ask(nose, end, 'a')]).toEqual(['nose somebody a', 'nose somebody a']);
    expect(worked()).toBe(1);
    ask({ ...nose }, end, 'a');
    ask(nose, { ...end }, 'a');
    ask(nose, null, 'a');
    expect(ask(nose, end, 'b')).toBe('nose somebody b');
    expect(worked()).toBe(5);
    ask(nose, null, 'a');
    ask(nose, end, 'b');
    expect(worked()).toBe(5);
  });

  it('remembers that there is nothing', () => {
    let worked = 0;
    const ask = remembered((_man: object): undefined => void (worked += 1));
    ask(nose);
    ask(nose);
    expect(worked).toBe(1);
  });

  it('takes no notice of arguments it does not take, as when a list is mapped with it', () => {
    let worked = 0;
    const ask = remembered((man: { readonly name: string }): string => {
      worked += 1;
      return man.name;
    });
    expect([nose, end, nose].map(ask)).toEqual(['nose', 'end', 'nose']);
    expect(worked).toBe(2);
  });
});

describe('rememberedLast', () => {
  it('works once for one object asked about several times in a row, and again once another was asked about', () => {
    let worked = 0;
    const ask = rememberedLast((man: { readonly name: string }): string => {
      worked += 1;
      return man.name;
    });
    expect([ask(nose), ask(nose), ask(end), ask(end), ask(nose)]).toEqual(['nose', 'nose', 'end', 'end', 'nose']);
    expect(worked).toBe(3);
    ask({ ...nose });
    expect(worked).toBe(4);
  });

  it('remembers that there is nothing', () => {
    let worked = 0;
    const ask = rememberedLast((_man: object): undefined => void (worked += 1));
    ask(nose);
    ask(nose);
    expect(worked).toBe(1);
  });
});
