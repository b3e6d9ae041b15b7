import { findCrop } from '../../src/engine/plants/find-crop.ts';
import { WATER_USE_CLASSES, type WaterUseClassId } from '../../src/engine/plants/water-use-classes.data.ts';
import { fromSi } from '../../src/engine/units.ts';
import { type GardenPlant, plantList } from '../../src/exchange/plants/plant-list.ts';
import { PLANT_REGIONS, type PlantRegion } from '../../src/exchange/plants/plant-regions.ts';
import { usualRootDepthM } from '../../src/exchange/plants/usual-roots.ts';

const REGIONS: Readonly<Record<PlantRegion, string>> = {
  'north-central-coast': 'North-Central Coastal',
  'central-valley': 'Central Valley',
  'south-coast': 'South Coastal',
  'south-inland': 'South Inland',
  'high-desert': 'High and Intermediate Desert',
  'low-desert': 'Low Desert',
};

const classNames = new Map(WATER_USE_CLASSES.map(({ id, name }) => [id, name.en]));
const nameOf = (id: WaterUseClassId | undefined): string => (id === undefined ? '-' : (classNames.get(id) ?? id));
const FROM_MEMORY = 'from memory';

/** Every plant and crop that is found by name, with each figure, the region that it holds for, and where it comes from. */
export function plantsPage(): string {
  const list = plantList();
  const plants = list.filter((plant): plant is GardenPlant => plant.type === 'plant');
  const crops = list.flatMap((plant) => (plant.type === 'crop' ? [plant] : []));
  return `# Plants by name

${plants.length} garden plants and ${crops.length} crops that are found by name. Written by the build from \`src/exchange/plants\`.

The class that a plant brings is that of most regions; where two are as many, the one that takes more water. A class that somebody
chooses for a planting wins. The regions are those of California in WUCOLS IV; elsewhere take the one whose summers are most like yours.
A dash: not assessed there, or not fit for it. Roots are those usual for the kind of plant, as \`LANDSCAPE_ROOTS\` of
\`src/engine/plants\` has them (common practice, no source; from memory); pot plants root as deep as their pot.

Sources: *WUCOLS IV* is the plant search database of WUCOLS IV, University of California, Davis (public repository
ucdavis/WUCOLS-plant-search-database, file WUCOLS-compressed.json: classes from its field \`wubr\`, spreads from its field \`ci\`).
*From memory* was not looked up.

| plant | botanical name | kind | class | ${PLANT_REGIONS.map((region) => REGIONS[region]).join(' | ')} | source of the class | spread, ft | source of the spread | roots, in (from memory) |
| --- | --- | --- | --- |${' --- |'.repeat(PLANT_REGIONS.length)} --- | --- | --- | --- |
${plants.map(plantRow).join('\n')}

## Crops

| crop | other names | source |
| --- | --- | --- |
${crops.map(({ crop, names: [name, ...others] }) => `| ${name} | ${others.join(', ')} (${FROM_MEMORY}) | ${findCrop(crop).source} |`).join('\n')}
`;
}

const rootsText = (depthM: number | undefined): string =>
  depthM === undefined ? '-' : String(Math.round(fromSi(depthM, 'rootDepth', 'us')));

function plantRow(plant: GardenPlant): string {
  const { names, botanical, kind, byRegion, spreadFt, isClassFromMemory, isSpreadFromMemory } = plant;
  return `| ${[
    names.join(', '),
    `*${botanical}*`,
    kind,
    nameOf(plant.class),
    ...PLANT_REGIONS.map((region) => nameOf(byRegion[region])),
    isClassFromMemory ? `${FROM_MEMORY}, no region` : 'WUCOLS IV',
    `${spreadFt.least} to ${spreadFt.most}`,
    isSpreadFromMemory ? FROM_MEMORY : 'WUCOLS IV',
    rootsText(usualRootDepthM(kind)),
  ].join(' | ')} |`;
}
