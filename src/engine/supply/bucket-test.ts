import { requireNumber } from '../require-number.ts';

/**
 * Flow of a supply from a bucket test, L/min: fill a pail of known volume with the tap fully open and nothing else
 * running, and time it.
 *
 * @throws RangeError where the volume or the time is not above 0
 */
export function bucketTestFlowLpm({
  volumeL,
  seconds,
}: {
  readonly volumeL: number;
  readonly seconds: number;
}): number {
  requireNumber('volume of the bucket (L)', volumeL, { above: 0 });
  requireNumber('time to fill it (s)', seconds, { above: 0 });
  return (volumeL * 60) / seconds;
}
