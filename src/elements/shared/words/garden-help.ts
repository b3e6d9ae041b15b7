/** Help where a gardener would not know. Common practice, no source, unless one is named. */
export const gardenHelp = {
  latitude:
    'Degrees north of the equator; south is negative. It sets the sun’s height where ET comes from temperatures.',
  onEquator: 'This is the equator: fill in your own.',
  windHeight: 'Above the ground. Wind is taken down to 6.6 ft (2 m), the height that reference ET is defined for.',
  missingWeather: 'How reference ET comes about on days without humidity, wind or sunshine (FAO-56 chapter 3).',
  setting: 'Beside a large water the same swing of temperature means more sun (FAO-56 eq. 50).',
  soil: 'Squeeze a moist handful. Falls apart: sandy. Holds a ball but makes no ribbon: loam. Rolls into a long ribbon: clay.',
  slope: 'Rise over 100 of length. On steep or heavy ground water runs off sooner, so runs are split.',
  rainMethod:
    'Used for months from normals; TR-21 looks at soil and demand. Days from a rain gauge are followed one by one.',
  climate: 'Reference ET is the water that a well-watered grass would use: the measure for everything else.',
  bucket: 'Open the tap fully, hold a bucket of known size under it, and time how long it takes to fill.',
  pressure:
    'At the line, after any regulator: read a gauge there while water runs. Left empty, the usual 20 psi (138 kPa) behind a regulator is taken.',
  window: 'Hours in which your water supplier, your neighbours and the sun let you water.',
  tank: 'Tank water is not for drinking. Mark its taps, and keep its pipes apart from the drinking water.',
  zone: 'One valve or timer station: everything in it runs together, for the same minutes.',
  timerStep: 'Minutes are rounded up to it.',
  longestCycle: 'Where water comes faster than the soil takes it, a run is split and the soil given time.',
  class: 'Very low: under a tenth of reference ET; low: 0.1 to 0.3; moderate: 0.4 to 0.6; high: 0.7 to 0.9 (WUCOLS).',
  density: '1 for an average planting; 0.5 to 0.9 for a sparse one, 1.1 to 1.3 for plants in layers.',
  microclimate: '1 in the open; 0.5 to 0.9 in shade and shelter, 1.1 to 1.4 beside walls and paving.',
  extent: 'The ground that the leaves cover, seen from above.',
  rootDepth: 'Dig beside a plant and look how deep most roots go.',
  refill:
    'Left alone until its roots’ share of the soil’s water is nearly used, then filled. For shrubs behind a shut-off.',
  shutOff: 'A hand valve that is opened only on some of the zone’s watering days.',
  spacing: 'About 6 in (15 cm) where plants stand densely, about 18 in (45 cm) round shrubs.',
  topology: 'A line that returns into the main is fed from both ends and carries about twice as far.',
  emitter:
    'The package says so. Plain ones give less where the pressure is less; these, down to a least pressure, do not.',
  exponent: 'From the data sheet: flow = k × pressure to the power of x. About 0.5 for most plain emitters.',
  bore: 'From the data sheet. Left empty, that of usual dripline.',
  rise: 'Rise over 100 of length; negative where the line runs downhill. Each foot of rise takes 0.433 psi (9.8 kPa a metre).',
  allowedDepletion: '0 to 1. Left empty, as published for its crop or type.',
  dryness: 'As a share of that: 0 is full, 1 is where it begins to go short.',
  stages: 'Days of each, from the seed packet or your own notes. Else the first published row is taken.',
  coefficients: 'From a local table. Else the published ones are taken.',
  slopeSide: 'Lay it uphill of the plant: water from a line below it is largely lost.',
} as const;
