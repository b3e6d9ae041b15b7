/** A zone's rule as a choice in a list. */
import type { GardenZone, ZoneRule } from '../../engine/garden.ts';
import { mixWords } from '../shared/words/mix-words.ts';

export { isSameRule } from '../../remedies/mix/families/rule.ts';

export function nameOfRule(rule: ZoneRule, { plantings }: Pick<GardenZone, 'plantings'>): string {
  const words = mixWords.rule;
  if (rule.kind !== 'planting') return words[rule.kind];
  return words.planting(plantings.find(({ id }) => id === rule.plantingId)?.name ?? rule.plantingId);
}
