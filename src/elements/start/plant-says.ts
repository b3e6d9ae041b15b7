/** What a plant or a crop that is chosen brings, and where that is from. */
import { findCrop } from '../../engine/plants/find-crop.ts';
import { toSi } from '../../engine/units.ts';
import type { GardenPlant } from '../../exchange/plants/plant-list.ts';
import { regionsByClass } from '../../exchange/plants/plant-regions.ts';
import { usualRootDepthM } from '../../exchange/plants/usual-roots.ts';
import { plantsWords } from '../../language/en/plants.ts';
import { isClassSetByHand } from '../../plan/need-of-plant.ts';
import type { StartContext } from './start-context.ts';

/** Its class by region, or that somebody chose another; its roots and its spread. */
export function plantSays(context: StartContext): string {
  const { reader, format, row } = context;
  const { need, listed } = row;
  const say = plantsWords(reader.language);
  if (need?.kind === 'crop') return say.cropRoots(format, findCrop(need.crop).rootDepthM.min);
  if (need?.kind !== 'class' || need.plant === undefined) return '';
  if (listed?.type !== 'plant')
    return isClassSetByHand(need) ? say.setByHand(need.plant.name, say.classes[need.plant.class]) : say.fromList;
  const depthM = usualRootDepthM(listed.kind);
  const roots = depthM === undefined ? '' : say.roots(format, depthM, say.kinds[listed.kind]);
  const { least, most } = listed.spreadFt;
  const grows = say.grows(format, toSi(least, 'length', 'us'), toSi(most, 'length', 'us'));
  const water = isClassSetByHand(need)
    ? say.setByHand(need.plant.name, say.classes[need.plant.class])
    : classSays(listed, context);
  return [water, roots, grows].filter((sentence) => sentence !== '').join(' ');
}

/** The list has it by region. */
function classSays(listed: GardenPlant, { reader, format }: StartContext): string {
  const say = plantsWords(reader.language);
  if (listed.isClassFromMemory) return say.fromMemory;
  const classes = regionsByClass(listed);
  if (classes.length === 1) return `${say.inAllRegions(say.classes[listed.class])} ${say.fromList}`;
  const byClass = classes.map((each) => {
    const regions = each.regions.map((region) => say.regions[region]);
    return say.inRegions(format, say.classes[each.class], regions);
  });
  return `${say.byRegion(byClass)} ${say.fromList}`;
}
