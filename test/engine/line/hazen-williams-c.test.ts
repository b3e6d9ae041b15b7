import { describe, expect, it } from 'vitest';
import { hazenWilliamsC } from '../../../src/engine/line/hazen-williams-c.ts';

describe('smoothness of plastic pipe (Keller and Bliesner 1990, NRCS NEH 623 ch. 7, from memory)', () => {
  it.each([
    [4.3, 130],
    [14.2, 130],
    [19.9, 130],
    [20, 140],
    [26.6, 140],
    [40, 150],
    [52.5, 150],
  ])('%s mm inside: C %s', (mm, C) => {
    expect(hazenWilliamsC(mm)).toBe(C);
  });

  it.each([0, -1, Number.NaN])('%s mm is refused', (mm) => {
    expect(() => hazenWilliamsC(mm)).toThrow(RangeError);
  });
});
