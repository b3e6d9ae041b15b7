/** The list of plants and the search in it, fetched and read once, when somebody begins to type a name. */
import type { FoundPlant } from './find-plants.ts';

export interface PlantFinder {
  /** At most so many, best first. */
  find(typed: string, most: number): readonly FoundPlant[];
}

let finder: PlantFinder | undefined;

/** Rejects where the part cannot be had. */
export async function loadPlants(): Promise<PlantFinder> {
  const { plantList, findPlants } = await import('./plant-search.ts');
  if (finder === undefined) {
    const list = plantList();
    finder = { find: (typed, most) => findPlants(list, typed, most) };
  }
  return finder;
}
