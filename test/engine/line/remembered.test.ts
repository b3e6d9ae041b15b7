import { describe, expect, it } from 'vitest';
import { remembered } from '../../../src/engine/line/remembered.ts';
import { laidLine, plantingWith } from '../../support/laid-line.ts';

describe('a remembered calculation', () => {
  const line = laidLine();
  const planting = plantingWith([line]);
  const counted = () => {
    const asked: number[] = [];
    const ask = remembered((_line, _planting, kpa) => {
      asked.push(kpa);
      return kpa > 100 ? { kpa } : undefined;
    });
    return { asked, ask };
  };

  it('is made once for a line, planting and pressure, also where it comes to nothing', () => {
    const { asked, ask } = counted();
    for (const kpa of [200, 50, 200, 50]) expect(ask(line, planting, kpa)?.kpa).toBe(kpa > 100 ? kpa : undefined);
    expect(asked).toEqual([200, 50]);
  });

  it('is made again for another line, planting or pressure', () => {
    const { asked, ask } = counted();
    ask(line, planting, 200);
    ask({ ...line }, planting, 200);
    ask(line, { ...planting }, 200);
    ask(line, planting, 201);
    expect(asked).toEqual([200, 200, 200, 201]);
  });

  it('holds no more than a hundred pressures at once, as many as a plan has sources', () => {
    const { asked, ask } = counted();
    for (let kpa = 1; kpa <= 101; kpa += 1) ask(line, planting, kpa);
    ask(line, planting, 101);
    expect(asked).toHaveLength(101);
    ask(line, planting, 1);
    expect(asked.slice(100)).toEqual([101, 1]);
  });
});
