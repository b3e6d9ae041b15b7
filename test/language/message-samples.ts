import { marked, type Samples } from './dropped-values.ts';

/** Calls of the messages that choose their text by a code: two at least, each without its `Format`. */
export const SAMPLES: Samples = {
  'cautions.checkFirst': [[['backflow']], [['tank']], [['digging']], [['codes']], [['promise']]],
  'howOften.more': [[[marked('month')]], [[marked('month'), marked('other')]]],
  'traceBalance.store-day.title': [[{ day: marked('day'), part: 'wetted' }], [{ day: marked('day'), part: 'dry' }]],
  'traceGround.need.mulched-kc.title': [[{ stage: 'initial' }], [{ stage: 'mid' }]],
  'traceGroundLabels.part-depletion': [[{ part: 'wetted' }], [{ part: 'dry' }]],
  'traceGroundLabels.day-part-depletion': [
    [{ day: marked('day'), part: 'wetted' }],
    [{ day: marked('day'), part: 'dry' }],
  ],
  'traceGroundLabels.day-part-end': [[{ day: marked('day'), part: 'wetted' }], [{ day: marked('day'), part: 'dry' }]],
  'traceGroundLabels.day-drawn': [[{ day: marked('day'), part: 'wetted' }], [{ day: marked('day'), part: 'dry' }]],
  'traceCheck.state.says': [[{ state: 'dry' }], [{ state: 'short' }], [{ state: 'met' }], [{ state: 'over' }]],
  'traceLabels.eto-days': [
    [{ days: marked('days'), method: 'observed' }],
    [{ days: marked('days'), method: 'normals' }],
    [{ days: marked('days'), method: 'observed', from: 'service' }],
  ],
  'traceLabels.rain-days': [
    [{ days: marked('days'), origin: 'observed-day' }],
    [{ days: marked('days'), origin: 'normals' }],
    [{ days: marked('days'), origin: 'observed-day', from: 'estimate' }],
  ],
  'traceNeed.rain-share.title': [
    [{ month: marked('month'), variant: 'tr21' }],
    [{ month: marked('month'), variant: 'fao' }],
  ],
  'traceValues.sources.estimate': [
    [{ estimate: 'elevation-assumed', cite: marked('cite') }],
    [{ estimate: 'wind-assumed', cite: marked('cite') }],
  ],
};
