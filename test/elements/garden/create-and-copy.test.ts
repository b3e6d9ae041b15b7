import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { createNextLine } from '../../../src/elements/garden/create-and-copy.ts';
import { applyEdit, tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { metricGarden, mixedGarden, oneBed } from '../../support/small-plans.ts';
import { filesUnder, projectRoot } from '../../tools/source-files.ts';

const demos = filesUnder('demo/plans', '.json').flatMap((path): [string, Plan][] => {
  const read = readPlan(readFileSync(join(projectRoot, path), 'utf8'));
  return read.ok ? [[path, read.plan]] : [];
});

it.each([['mixed garden', mixedGarden()], ['metric garden', metricGarden()], ['one bed', oneBed()], ...demos])(
  'a line can be added to every planting of %s, and another after it',
  (_name, plan) => {
    for (const zone of plan.zones) {
      for (const planting of zone.plantings) {
        const at = { zone: zone.id, planting: planting.id };
        const once: Edit = { type: 'add-line', ...at, line: createNextLine(plan, planting) };
        expect(tryEdit(plan, once), planting.name).toMatchObject({ ok: true });
        const next = applyEdit(plan, once);
        const grown = next.zones.find(({ id }) => id === zone.id)?.plantings.find(({ id }) => id === planting.id);
        if (grown === undefined) throw new Error(`${planting.name} is gone`);
        expect(grown.lines).toHaveLength(planting.lines.length + 1);
        expect(
          tryEdit(next, { type: 'add-line', ...at, line: createNextLine(next, grown) }),
          planting.name,
        ).toMatchObject({
          ok: true,
        });
      }
    }
  },
);

it('the plans of the demo are read', () => {
  expect(demos.length).toBeGreaterThan(0);
});
