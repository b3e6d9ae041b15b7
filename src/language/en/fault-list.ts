/** What stands around the faults of a file or an edit that was refused; each fault's own words are made by `describeFault`. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const THINGS = { one: 'thing', other: 'things' };

export const faultList = {
  /** By what was refused. */
  title: {
    file: ({ count }: Format, faults: number) => `Plan not opened: fix ${count(faults, THINGS)}`,
    edit: ({ count }: Format, faults: number) => `Change not made: fix ${count(faults, THINGS)}`,
  },
  planStays: 'The plan on screen is as it was.',
  found: (value: string) => `Found: ${value}`,
  expected: (expected: string) => `Expected: ${expected}`,
};

export const faultListWords = area('faultList', faultList);
