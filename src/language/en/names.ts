/**
 * Names of soils, plants, crops, classes and places in another language, each by its English name. English has none: its names stand in
 * the tables of data.
 */
import { area } from '../area.ts';

export const names: Readonly<Record<string, string>> = {};

export const namesWords = area('names', names);
