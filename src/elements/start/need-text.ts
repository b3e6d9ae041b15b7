import { PLANT_TYPES } from '../../engine/plants/plant-types.data.ts';
import { plantsWords } from '../../language/en/plants.ts';
import { nameIn } from '../../language/name-in.ts';
import type { Reader } from '../../language/reader.ts';
import type { PlanNeed } from '../../plan/schema/plan-schema.ts';
import { plantNameOf } from '../garden/plant-name.ts';

/** What a planting goes by, in a word or two. */
export function needText(need: PlanNeed, reader: Reader): string {
  const { language } = reader;
  const say = plantsWords(language);
  if (need.kind === 'crop') return plantNameOf(need, reader);
  if (need.kind === 'type') {
    const name = PLANT_TYPES.find(({ id }) => id === need.type)?.name;
    return name === undefined ? need.type : nameIn(name, language);
  }
  const water = say.classes[need.class];
  return need.plant === undefined ? say.needs(water) : say.brought(need.plant.name, water);
}
