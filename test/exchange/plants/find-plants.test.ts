/** Common names and their spellings are common knowledge; the classes stand against figures read in the published list of WUCOLS IV. */
import { describe, expect, it } from 'vitest';
import { editDistance } from '../../../src/exchange/plants/edit-distance.ts';
import { findPlants } from '../../../src/exchange/plants/find-plants.ts';
import { type GardenPlant, type ListedPlant, plantList } from '../../../src/exchange/plants/plant-list.ts';
import { PLANT_REGIONS, regionsByClass } from '../../../src/exchange/plants/plant-regions.ts';

const list = plantList();
const plants = list.filter((plant): plant is GardenPlant => plant.type === 'plant');
const idOf = (plant: ListedPlant) => (plant.type === 'plant' ? plant.botanical : plant.crop);
const found = (typed: string) => findPlants(list, typed, 5).map(({ plant }) => idOf(plant));

const TYPED: readonly (readonly [typed: string, plant: string])[] = [
  ['lavendar', 'Lavandula spp.'],
  ['hydrangia', 'Hydrangea macrophylla'],
  ['hortensia', 'Hydrangea macrophylla'],
  ['roses', 'Rosa hybrids (bush)'],
  ['rhododendrun', 'Rhododendron spp.'],
  ['azaleas', 'Rhododendron spp. (azalea)'],
  ['japanese maples', 'Acer palmatum'],
  ['acer palmatum', 'Acer palmatum'],
  ['bleeding hart', 'Dicentra spp.'],
  ['black eyed susans', 'Rudbeckia spp.'],
  ['courgettes', 'squash-zucchini'],
  ['aubergine', 'eggplant'],
  ['tomatos', 'tomato'],
  ['chrysanthemem', 'Chrysanthemum x morifolium'],
  ['pelargoniums', 'Pelargonium x hortorum'],
  ['busy lizzie', 'Impatiens walleriana'],
  ['mother in laws tongue', 'Sansevieria spp.'],
  ['butterfly busch', 'Buddleja davidii'],
  ['forsithia', 'Forsythia x intermedia'],
  ['lilly of the nile', 'Agapanthus praecox'],
  ['rosmary', 'Rosmarinus officinalis'],
  ['blueberries', 'bush-berries'],
  ['fushia', 'Fuchsia hybrids'],
  ['crepe mirtle', 'Lagerstroemia spp.'],
  ['snapdragens', 'Antirrhinum majus'],
  ['zuccini', 'squash-zucchini'],
  ['egg plant', 'eggplant'],
  ['maize', 'sweet-corn'],
  ['spuds', 'potato'],
  ['cauliflour', 'broccoli'],
  ['mangetout', 'peas-fresh'],
  ['wistaria', 'Wisteria spp.'],
  ['box hedge', 'Buxus sempervirens'],
  ['lemon tree', 'citrus'],
  ['juniper bushes', 'Juniperus spp.'],
  ['peaches', 'peach-stone-fruit'],
  ['plantain lily', 'Hosta spp.'],
  ['heuchra', 'Heuchera sanguinea'],
  ['day lillies', 'Hemerocallis spp.'],
  ['houseleek', 'Sempervivum spp.'],
  ['devils ivy', 'Epipremnum aureum'],
  ['corriander', 'Coriandrum sativum'],
  ['sweet bay', 'Laurus nobilis'],
  ['nasturshum', 'Tropaeolum majus'],
  ['marygold', 'Tagetes patula'],
  ['grannys bonnet', 'Aquilegia spp.'],
  ['lily turf', 'Liriope spp.'],
  ['mountain ash', 'Sorbus aucuparia'],
  ['privit', 'Ligustrum japonicum'],
  ['yarow', 'Achillea millefolium'],
  ['daliah', 'Dahlia spp.'],
  ['bouganvilla', 'Bougainvillea spp.'],
  ['peonys', 'Paeonia spp.'],
  ['gherkin', 'cucumber'],
  ['pansys', 'Viola x wittrockiana'],
];

describe('a plant typed as people type it', () => {
  it.each(TYPED)('%s is found within the first five', (typed, plant) => {
    expect(found(typed)).toContain(plant);
  });

  // Botanically peppermint is no pepper, sagebrush no sage and a rosemary no rose (common knowledge).
  it.each([
    ['pepper', 'sweet-pepper', 'mint'],
    ['peppers', 'sweet-pepper', 'mint'],
    ['rose', 'Rosa hybrids (bush)', 'Rosmarinus officinalis'],
  ] as const)('%s is a whole word of %s before it begins a longer word of %s', (typed, word, beginning) => {
    const all = findPlants(list, typed, list.length).map(({ plant }) => idOf(plant));
    expect(all[0]).toBe(word);
    expect(all.indexOf(beginning)).toBeGreaterThan(0);
  });

  it('has every whole word of a name before the beginning of a longer word, of any plant of the list', () => {
    const words = [...new Set(list.flatMap(({ folded }) => folded.flatMap((name) => name.split(' '))))].sort();
    const begun = words.filter((word, index) => word.length > 3 && words[index + 1]?.startsWith(word));
    expect(begun.length).toBeGreaterThan(10);
    const wrong = begun.filter((word) => {
      const isWord = findPlants(list, word, list.length).map(({ plant }) =>
        plant.folded.some((name) => name.split(' ').includes(word)),
      );
      return isWord.lastIndexOf(true) > (isWord.includes(false) ? isWord.indexOf(false) : isWord.length);
    });
    expect(wrong).toEqual([]);
  });

  it('is nothing where nothing was typed, or nothing like it grows', () => {
    expect(found('  ')).toEqual([]);
    expect(found('xqzzzv')).toEqual([]);
  });

  it('tells the name that fits, where that is another than the one that is shown', () => {
    expect(findPlants(list, 'courgette', 1)[0]?.as).toBe('courgette');
  });
});

describe('the distance of two words', () => {
  // Wagner and Fischer (1974) for the first; a swap of neighbours counts once (Damerau 1964).
  it.each([
    ['kitten', 'sitting', 3],
    ['lavender', 'lavedner', 1],
    ['rose', 'rose', 0],
  ] as const)('%s and %s: %i', (one, other, distance) => {
    expect(editDistance(one, other, 5)).toBe(distance);
    expect(editDistance(other, one, 5)).toBe(distance);
  });

  it('is told as one more than the most that is asked for', () => {
    expect(editDistance('abcdef', 'uvwxyz', 2)).toBe(3);
  });
});

describe('the list', () => {
  it('has each botanical name and each shown name once', () => {
    for (const names of [plants.map(({ botanical }) => botanical), list.map(({ names: [first] }) => first)]) {
      expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
    }
  });

  it('has a class, a kind and a spread for each of well over 250', () => {
    expect(plants.length).toBeGreaterThan(250);
    for (const { botanical, kind, spreadFt, isClassFromMemory, byRegion } of plants) {
      expect(kind, botanical).toBeDefined();
      expect(spreadFt.least, botanical).toBeGreaterThan(0);
      expect(spreadFt.most, botanical).toBeGreaterThanOrEqual(spreadFt.least);
      expect(isClassFromMemory, botanical).toBe(Object.keys(byRegion).length === 0);
    }
  });

  // WUCOLS IV, plant search database of the University of California, Davis, field `wubr`.
  it.each([
    ['Lavandula spp.', { low: 4, moderate: 1 }],
    ['Rosa hybrids (bush)', { moderate: 6 }],
    ['Cercis occidentalis', { 'very-low': 2, low: 2, moderate: 2 }],
    ['Betula nigra', { high: 4 }],
    ['Berberis thunbergii', { low: 1, moderate: 3, high: 2 }],
    ['Eschscholzia californica', { 'very-low': 4 }],
    ['Spathiphyllum spp.', { moderate: 1, high: 1 }],
    ['Alnus glutinosa', { moderate: 3, high: 1 }],
    ["Populus nigra 'Italica'", { moderate: 4, high: 2 }],
    ['Eucalyptus polyanthemos', { low: 4, moderate: 2 }],
    ['Opuntia spp.', { 'very-low': 6 }],
  ])('gives %s the classes of WUCOLS IV', (botanical, counts) => {
    const plant = plants.find((each) => each.botanical === botanical);
    if (plant === undefined) throw new Error(`${botanical} is not in the list`);
    const told = regionsByClass(plant).map((row) => [row.class, row.regions.length]);
    expect(Object.fromEntries(told)).toEqual(counts);
  });
  // The same file, entries 280 to 365, 1004 to 1126, 1867 to 1998 and 2991 to 3113, each read again for this test: V very low, L low,
  // M moderate, H high, ? not assessed, / not fit, in the order of the regions.
  it.each([
    ['Arbutus unedo', 'LLLLMM'],
    ['Arctostaphylos densiflora', 'LLLL//'],
    ['Argyranthemum frutescens', 'MMMM/M'],
    ['Armeria maritima', 'MMMMMM'],
    ["Artemisia 'Powis Castle'", 'LMMLMM'],
    ['Corylus maxima', 'L/////'],
    ['Crataegus spp.', 'MMMMM/'],
    ['Cotinus coggygria', 'LLLLL/'],
    ['Cupressus sempervirens', 'LMLLMM'],
    ['Cydonia oblonga', 'LLML??'],
    ['Cycas revoluta', 'MMMMMM'],
    ['Cyclamen persicum', 'LMML//'],
    ['Crocosmia hybrids', 'LLLL/?'],
    ['Crassula spp.', 'LLLL/?'],
    ['Cyrtomium falcatum', 'MMMM??'],
    ['Cotoneaster spp. (shrubs)', 'LLLMMM'],
    ['Cortaderia selloana', 'VLL/MM'],
    ['Cymbopogon citratus', 'MMMM??'],
    ['Cornus sericea', 'HHHH//'],
    ['Crinum spp.', 'MMMMM?'],
    ['Iberis sempervirens', 'MMMM//'],
    ['Ilex aquifolium', 'LMMMMM'],
    ['Ilex crenata', 'M?MM??'],
    ['Ilex glabra', 'M?????'],
    ['Iris germanica', 'LLLMMM'],
    ['Iris ensata', 'HHHH??'],
    ['Iris sibirica', 'MMH/??'],
    ['Iris x hollandica', 'MM?VMM'],
    ['Jacaranda mimosifolia', 'MMMM/M'],
    ['Jasminum nudiflorum', 'LL????'],
    ['Jasminum polyanthum', 'MMMM/M'],
    ['Juglans nigra', 'MMM///'],
    ['Juglans regia', 'MMMM//'],
    ['Juniperus spp.', 'LLLMMM'],
    ['Kalanchoe spp.', 'LLLL/M'],
    ['Kalmia latifolia', 'M?//??'],
    ['Kerria japonica', 'MM?MM?'],
    ['Itea virginica', 'M?????'],
    ['Ipheion uniflorum', 'LLLL??'],
    ['Rhus typhina', 'LLL?L/'],
    ['Ribes sanguineum', 'LLLM??'],
    ['Rosa banksiae', 'LLMMMM'],
    ['Rosa rugosa', 'LMMMMM'],
    ['Rosa hybrids (climbing)', 'MMMMHH'],
    ['Rosa hybrids (bush)', 'MMMMMM'],
    ['Rosa hybrids (ground cover)', 'MMMMMM'],
    ['Rosmarinus officinalis', 'LLVLMM'],
    ['Rudbeckia spp.', 'MMMM//'],
    ['Ruta graveolens', 'MMLM??'],
    ['Salix babylonica', 'HHHHH?'],
    ['Sagina subulata', 'MMMH//'],
  ])('has for %s the six letters that were read: %s', (botanical, letters) => {
    const { byRegion } = plants.find((each) => each.botanical === botanical) ?? {};
    const classes = { V: 'very-low', L: 'low', M: 'moderate', H: 'high' } as const;
    const read = PLANT_REGIONS.flatMap((region, index) => {
      const found = Object.entries(classes).find(([letter]) => letter === letters[index]);
      return found === undefined ? [] : [[region, found[1]]];
    });
    expect(byRegion).toEqual(Object.fromEntries(read));
  });

  // Costello and Jones (1999), inland south California, as reprinted in Table 5 of a guide of watereuse.org: factors of 0.1 to 0.3 are
  // low, of 0.4 to 0.6 moderate.
  it.each([
    ['Arctostaphylos densiflora', 'low'],
    ['Arbutus unedo', 'low'],
    ['Bougainvillea spp.', 'low'],
    ['Hesperaloe parviflora', 'low'],
    ['Hibiscus rosa-sinensis', 'moderate'],
  ] as const)('has for %s inland in the south the class of an earlier edition: %s', (botanical, id) => {
    expect(plants.find((each) => each.botanical === botanical)?.byRegion['south-inland']).toBe(id);
  });
});
