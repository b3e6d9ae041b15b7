/** What a newer version of the format changes for a plan, in the reader's language. */
import type { VersionChange } from '../plan/versions/version-change.ts';
import { gardenPlaceWords } from './en/garden-place.ts';
import { versionChangesWords } from './en/version-changes.ts';
import { formatFor } from './format/format.ts';
import type { Reader } from './reader.ts';

export function describeVersionChange(change: VersionChange, reader: Reader): string {
  const words = versionChangesWords(reader.language);
  const format = formatFor(reader);
  switch (change.code) {
    case 'rain-method': {
      const { options } = gardenPlaceWords(reader.language).rain.method;
      return words.rainMethod(options[change.values.from], options[change.values.to]);
    }
    case 'target-depletion': {
      const { plantings, from, to } = change.values;
      return words.targetDepletion(format, plantings, from, to);
    }
    case 'rain-read-through':
      return words.rainReadThrough(format, change.values.weeks);
    case 'lines-ended':
      return words.linesEnded(format, change.values.lines);
    case 'wetted-anew':
      return words.wettedAnew(format, change.values.plantings);
    case 'flow-at-pressure':
      return words.flowAtPressure(format, change.values.sources);
    case 'bucket-share':
      return words.bucketShare(format, change.values.sources, change.values.share);
    case 'efficiency-by-line':
      return words.efficiencyByLine(format, change.values.zones);
    case 'loop-emitters':
      return words.loopEmitters(format, change.values.lines);
    case 'ground-wetted':
      return words.groundWetted(format, change.values.plantings);
    case 'roots-grow':
      return words.rootsGrow(format, change.values.plantings);
    case 'dry-down':
      return words.dryDown(format, change.values.plantings);
    case 'frozen-ground':
      return words.frozenGround(format, change.values.months);
    case 'names-cleaned':
      return words.namesCleaned(format, change.values.names);
  }
}
