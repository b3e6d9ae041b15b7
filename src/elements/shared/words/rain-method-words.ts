import type { RainMethod } from '../../../engine/rain/effective-rain.ts';

/** The ways in which a month's rain is counted, by the names that their publishers gave them. */
export const rainMethodNames: Readonly<Record<RainMethod, string>> = {
  tr21: 'USDA SCS, TR-21',
  fao: 'FAO Training Manual 3',
  'scs-simplified': 'USDA SCS, simplified',
  fraction: 'a fixed share',
  balance: 'all, by the soil’s balance',
};
