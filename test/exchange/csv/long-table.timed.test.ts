/** A table so long that it is read in steps. */
import { describe, expect, it } from 'vitest';
import { csvSteps } from '../../../src/exchange/csv/table-from-csv.ts';
import { plan, season } from './mixed-season.ts';

const against = { plan, season };

describe('a long table', () => {
  const ROWS = 60_000;

  it.each([
    ['of weather', `Date,Rain (in)\r\n${'2027-04-06,0.5\r\n'.repeat(ROWS)}`, 'date-twice', ROWS - 1],
    ['of minutes', `Zone,2027-04-12\n${'Beds,45\n'.repeat(ROWS)}`, 'zone-twice', ROWS - 1],
    ['of names in lines', `Zone,2027-04-12\n${'"Beds\nby a ""wall""",45\n'.repeat(ROWS)}`, 'zone-unknown', ROWS],
  ])('%s is read in steps, none of which takes long', (_name, text, code, faults) => {
    const steps = csvSteps(text, against);
    const times: number[] = [];
    for (;;) {
      const began = process.cpuUsage();
      const step = steps.next();
      const { user, system } = process.cpuUsage(began);
      times.push((user + system) / 1000);
      if (step.done !== true) continue;
      expect(step.value).toMatchObject({ rows: ROWS, faults: { length: faults } });
      expect('faults' in step.value && step.value.faults.every((fault) => fault.code === code)).toBe(true);
      break;
    }
    expect(times.length).toBeGreaterThan(ROWS / 1000);
    const whole = times.reduce((sum, ms) => sum + ms, 0);
    expect(Math.max(...times)).toBeLessThan(whole / 3);
  });
});
