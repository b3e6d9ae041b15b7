/** A season against its supply: flow, hours, allowance and tank, what roofs yield, and supply against demand as running totals. */
export { type Cumulative, cumulative } from '../season/cumulative.ts';
export { roofYieldL } from './roof-yield.ts';
export { type SupplyOutlook, seasonSupply } from './season-supply.ts';
