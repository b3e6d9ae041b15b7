import { describe, expect, it, vi } from 'vitest';
import { memoize } from '../../../src/plan/to-garden/memoize.ts';

describe('memoize', () => {
  it('hands on the result while the part is the same object and the context says the same', () => {
    const convert = vi.fn((part: { readonly n: number }, { by }: { readonly by: number }) => ({
      product: part.n * by,
    }));
    const keeping = memoize(convert);
    const part = { n: 3 };
    const first = keeping(part, { by: 2 });
    expect(keeping(part, { by: 2 })).toBe(first);
    expect(convert).toHaveBeenCalledTimes(1);
    expect(keeping(part, { by: 5 })).toEqual({ product: 15 });
    expect(keeping({ n: 3 }, { by: 5 })).toEqual({ product: 15 });
    expect(convert).toHaveBeenCalledTimes(3);
  });

  it('counts a field that is left out as another context', () => {
    const convert = vi.fn((_part: object, context: { readonly by?: number | undefined; readonly at?: number }) => ({
      context,
    }));
    const keeping = memoize(convert);
    const part = {};
    keeping(part, { by: undefined });
    keeping(part, {});
    keeping(part, { at: 1 });
    expect(convert).toHaveBeenCalledTimes(3);
  });
});
