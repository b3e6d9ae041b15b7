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
    case 'names-cleaned':
      return words.namesCleaned(format, change.values.names);
  }
}
