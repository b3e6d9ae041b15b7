/** What the trace says around the engine's steps. */
export const traceWords = {
  choose: 'Select a cell in the grid, and every step that leads to its number appears here.',
  title: 'Why this number?',
  zoneWeek: (zone: string, week: string, minutes: string, volume: string) => `${zone}, ${week}: ${minutes}, ${volume}`,
  plantingWeek: (planting: string, week: string, volume: string) => `${planting}, ${week}: ${volume}`,
  whose: 'Number of',
  wholeZone: 'The whole zone',
  steps: 'Steps, in the order they are worked out',
  how: 'How it is worked out',
  formula: 'Formula',
  source: 'Source',
  inputs: 'From',
} as const;
