/** Plantings of one zone side by side: which is overwatered, which goes short, and when a shut-off would be opened. */
export { compareZone, type PlantingComparison, rulesOf, type ZoneComparison } from './compare-zone.ts';
export { type ShutOffStretch, shutOffCalendar } from './shut-off-calendar.ts';
