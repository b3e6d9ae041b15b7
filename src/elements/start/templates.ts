/** Invented gardens to begin with; a place of one's own, and its weather, take the place of the example's. */
import { addDays, type IsoDate } from '../../engine/calendar.ts';
import type { CropId } from '../../engine/plants/crops.data.ts';
import type { WaterUseClassId } from '../../engine/plants/water-use-classes.data.ts';
import { startGardensWords } from '../../language/en/start-gardens.ts';
import type { Language } from '../../language/language.ts';
import { type ContainerForm, containerOf } from '../../plan/container-size.ts';
import { convertUnits } from '../../plan/edits/convert-units.ts';
import { needOfPlant } from '../../plan/need-of-plant.ts';
import { type NewPlanOptions, newPlan } from '../../plan/new-plan.ts';
import type {
  Plan,
  PlanClimate,
  PlanNeed,
  PlanPlanting,
  PlanSupply,
  PlanZone,
  Weekday,
} from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { linesFor, usualWay } from '../../plan/usual-lines.ts';

export type TemplateId = 'vegetables' | 'border' | 'porch' | 'club';

type Extent = PlanPlanting['extent'];
type Canopy = Extract<Extent, { kind: 'canopy' }>;
type Garden = Pick<Plan, 'zones'> & { readonly supply?: PlanSupply };
type Say = ReturnType<typeof startGardensWords>;

/** Of the demo garden, °F and in: real figures of a place that is not the reader's. */
const EXAMPLE_WEATHER: Omit<Extract<PlanClimate, { minTemperature?: unknown }>, 'source'> = {
  minTemperature: [26, 25.8, 33.4, 43.3, 54.9, 63.4, 70.8, 68.5, 61.9, 52.2, 39.5, 37],
  maxTemperature: [39.9, 39.5, 48.4, 60.4, 70.4, 78.6, 85.1, 83.3, 77.6, 66.2, 53.8, 48.8],
  rain: [3.23, 2.71, 3.15, 3.34, 3.8, 5.61, 2.74, 3.66, 2.5, 2.61, 2.45, 5.32],
  rainDays: [10.8, 10.4, 10.2, 8, 11, 11.5, 10, 6.8, 8, 8.8, 7.2, 14.8],
};
const EXAMPLE_LATITUDE = 40.8;

export function templatePlan(id: TemplateId, options: NewPlanOptions, language: Language): Plan {
  const say = startGardensWords(language);
  const plan = newPlan({ ...options, units: 'us' });
  const made: Plan = {
    ...plan,
    notes: say.notes,
    site: { ...plan.site, latitude: EXAMPLE_LATITUDE, climate: { source: say.weather, ...EXAMPLE_WEATHER } },
    ...GARDENS[id](plan, say),
    assumed: ['climate', ...(plan.assumed ?? [])],
  };
  return options.units === 'us' ? made : convertUnits(made, options.units);
}

const MON_WED_FRI: readonly Weekday[] = ['mon', 'wed', 'fri'];
const TUE_THU_SAT: readonly Weekday[] = ['tue', 'thu', 'sat'];

/** Lengths in feet, diameters in inches. */
const GARDENS: Readonly<Record<TemplateId, (plan: Plan, say: Say) => Garden>> = {
  vegetables: ({ season: { firstDay } }, say) => ({
    zones: [
      zone('zone-1', say.zones.beds, MON_WED_FRI, [
        planting('tomatoes', say.tomatoes, crop('tomato', later(firstDay, 6)), bed(8, 4)),
        planting('salad', say.salad, crop('lettuce', later(firstDay, 1)), bed(8, 4)),
        planting('beans', say.beans, crop('beans-green', later(firstDay, 5)), rows(3, 8)),
      ]),
    ],
  }),
  border: (_, say) => ({
    zones: [
      zone('zone-1', say.zones.border, TUE_THU_SAT, [
        planting('perennials', say.perennials, waterUse('moderate'), bed(20, 5)),
        planting('hydrangeas', say.hydrangea, plant(say.plants.hydrangea, 'moderate'), canopy(3, 48)),
        planting('lavender', say.lavender, plant(say.plants.lavender, 'low'), canopy(5, 30)),
      ]),
      zone(
        'zone-2',
        say.zones.hedge,
        ['tue', 'sat'],
        [planting('hedge', say.hedge, plant(say.plants.boxwood, 'moderate'), rows(1, 24))],
      ),
    ],
  }),
  porch: (_, say) => ({
    zones: [
      zone('zone-1', say.zones.pots, WEEKDAYS, [
        contained('pot', planting('pots', say.pots, plant(say.plants.geranium, 'low'), canopy(6, 12))),
        contained('basket', planting('baskets', say.baskets, plant(say.plants.petunia, 'moderate'), canopy(4, 14))),
        contained('pot', planting('large-pots', say.bigPots, plant(say.plants.boxwood, 'moderate'), canopy(2, 18))),
      ]),
    ],
  }),
  club: ({ season: { firstDay }, supply }, say) => ({
    supply: { ...supply, sources: [{ name: say.zones.main, flow: { kind: 'typed', flow: 8 } }] },
    zones: [
      zone('zone-1', say.keepers(say.names.first), MON_WED_FRI, [
        planting('tomatoes', say.tomatoes, crop('tomato', later(firstDay, 6)), bed(20, 4)),
      ]),
      zone('zone-2', say.keepers(say.names.second), MON_WED_FRI, [
        planting('salad', say.salad, crop('lettuce', later(firstDay, 1)), bed(10, 4)),
        planting('carrots', say.carrots, crop('carrots', later(firstDay, 2)), bed(10, 4)),
      ]),
      zone('zone-3', say.keepers(say.names.third), TUE_THU_SAT, [
        planting('squash', say.squash, crop('squash-zucchini', later(firstDay, 6)), bed(20, 4)),
      ]),
      zone('zone-4', say.keepers(say.names.fourth), TUE_THU_SAT, [
        planting('strawberries', say.strawberries, crop('strawberries', firstDay), bed(20, 4)),
      ]),
      zone('zone-5', say.shared, ['sat'], [planting('herbs', say.herbs, waterUse('low'), bed(12, 4))]),
    ],
  }),
};

function zone(
  id: string,
  name: string,
  wateringDays: readonly Weekday[],
  plantings: readonly PlanPlanting[],
): PlanZone {
  return { id, name, wateringDays, plantings };
}

function planting<Size extends Extent>(id: string, name: string, need: PlanNeed, extent: Size) {
  const lines = linesFor(usualWay(extent, false), extent, 'us');
  const day = need.kind === 'crop' ? (['plantedOn'] as const) : [];
  return { id, name, need, extent, lines, assumed: ['need', ...day, 'extent', 'lines'] } as const;
}

/** The same in pots or baskets, as wide as its plants. */
function contained(form: ContainerForm, inGround: ReturnType<typeof planting<Canopy>>): PlanPlanting {
  const { extent } = inGround;
  const lines = linesFor(usualWay(extent, true), extent, 'us');
  return { ...inGround, lines, container: containerOf(form, extent.diameter, 'us') };
}

const bed = (length: number, width: number): Extent => ({ kind: 'bed', length, width });

const rows = (count: number, length: number): Extent => ({ kind: 'rows', rows: count, length });

const canopy = (count: number, diameter: number): Canopy => ({ kind: 'canopy', count, diameter });

const waterUse = (id: WaterUseClassId): PlanNeed => ({ kind: 'class', class: id });

const crop = (id: CropId, plantedOn: string): PlanNeed => ({ kind: 'crop', crop: id, plantedOn });

const plant = (named: { readonly name: string; readonly botanical: string }, id: WaterUseClassId): PlanNeed =>
  needOfPlant({ ...named, class: id }, undefined);

const later = (day: IsoDate, weeks: number): IsoDate => addDays(day, 7 * weeks);
