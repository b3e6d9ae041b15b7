import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';

it.each(filesUnder('demo/club', '.runnel.json'))(
  '%s is a plan without faults, is labelled invented, and takes water',
  (file) => {
    const read = readPlan(readFileSync(`${projectRoot}/${file}`, 'utf8'));
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(read.plan.notes).toContain('invented');
    const season = computeSeason(read.plan);
    expect(season.zones.length).toBeGreaterThan(1);
    expect(Math.max(...season.totals.figures.block)).toBeGreaterThan(0);
  },
);
