/** The list of plants with what searches it: fetched together, when somebody begins to type a name. */
export { findPlants } from './find-plants.ts';
export { plantList } from './plant-list.ts';
