/**
 * The mixed garden with every text that a person can write trying to be more than a text: a formula, by each of the letters
 * that make one in a spreadsheet, and markup with a script in it (OWASP: "CSV Injection", "Cross Site Scripting").
 */
import type { Plan, PlanPlanting, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from './small-plans.ts';

/** What makes a spreadsheet read a cell as a formula. */
export const FORMULA_STARTS = ['=', '+', '-', '@', '\t', '\r'] as const;

/** Name of the element that would be there if a text were read as markup. */
export const ATTACK_TAG = 'x-attack';

const MARKUP = `<${ATTACK_TAG}></${ATTACK_TAG}><img src=x onerror="document.title='attacked'">`;

/** A text that begins so and ends with `label`, which tells one from another. */
export function hostileText(start: string, label: string): string {
  return `${start}1+1${MARKUP} ${label}`;
}

/** A name holds no tab and no line break. */
const nameStart = (start: string): string => start.replace(/[\t\r]/, ' =');

export function hostileGarden(): Plan {
  const plan = mixedGarden();
  const [beds, containers] = plan.zones;
  if (beds === undefined || containers === undefined) throw new Error('the garden has two zones');
  const renamed = (zone: PlanZone, start: string): PlanZone => ({
    ...zone,
    name: hostileText(nameStart(start), `zone ${zone.id}`),
    note: hostileText(start, 'note'),
    plantings: zone.plantings.map((each) => renamedPlanting(each, start)),
  });
  // One zone more for each letter that is left, with a planting under ids of its own.
  const more = FORMULA_STARTS.slice(2).map((start, at) => {
    const plantings = containers.plantings.map((each) => ({ ...each, id: `${each.id}-${at}` }));
    return renamed({ ...containers, id: `more-${at}`, plantings }, start);
  });
  const note = hostileText('=', 'note');
  return {
    ...plan,
    name: hostileText('=', 'plan'),
    notes: hostileText('@', 'notes'),
    supply: {
      ...plan.supply,
      sources: (plan.supply?.sources ?? []).map((source) => ({ ...source, name: hostileText('+', 'source') })),
    },
    zones: [
      renamed(beds, '='),
      renamed(containers, '+'),
      ...more,
      { ...beds, id: 'quoted', name: '"Sun" beds', plantings: [] },
    ],
    choices: {
      ...plan.choices,
      beds: { ...plan.choices?.['beds'], '2027-07-05': { minutes: 120, note }, '2027-07-12': { minutes: 0, note } },
    },
  };
}

function renamedPlanting(planting: PlanPlanting, start: string): PlanPlanting {
  return {
    ...planting,
    name: hostileText(nameStart(start), `planting ${planting.id}`),
    note: hostileText(start, 'note'),
  };
}
