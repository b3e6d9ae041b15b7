/** What the trace says around the engine's steps. */
export const traceWords = {
  title: 'Why this number?',
  choose: 'Select a cell in the grid, and every step that leads to its number appears here.',
  whyZone: (minutes: string, volume: string) => `Why ${minutes}, ${volume}?`,
  why: (volume: string) => `Why ${volume}?`,
  whyWeather: {
    eto: (depth: string) => `Why ${depth} of reference ET?`,
    rain: (depth: string) => `Why ${depth} of rain?`,
  },
  wholeGarden: 'Whole garden',
  whose: 'Number of',
  wholeZone: 'The whole zone',
  steps: 'Steps, in the order they are worked out',
  formula: 'Formula',
  source: 'Source',
} as const;
