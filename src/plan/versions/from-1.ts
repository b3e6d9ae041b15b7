/**
 * Version 1 (0.1.0) to 2. Version 2 has more fields, names without controls, in which something shows (others are cleaned), and lines
 * that lie at once: one that another took over from ends the day before. Nothing else that was written is changed. What was left out goes by the defaults of today. The plan is told of all this.
 */
import type { RainMethod } from '../../engine/rain/effective-rain.ts';
import { DEFAULTS } from '../defaults.ts';
import { fieldsIn, type Loose, listIn } from '../reading/loose.ts';
import type { Migration } from './migrated.ts';
import type { VersionChange } from './version-change.ts';
import { waterChanges } from './water-changes.ts';
import { withCleanNames } from './with-clean-names.ts';
import { withLinesEnded } from './with-lines-ended.ts';

/** Defaults that a plan may have relied on. */
interface UsualThen {
  readonly rainMethod: RainMethod;
  readonly target: number;
}

const USUAL_IN_1: UsualThen = { rainMethod: 'tr21', target: 0 };

export const from1: Migration = {
  from: 1,
  migrate: (document) => {
    const { document: cleaned, names } = withCleanNames(document);
    const { document: migrated, lines, wettedAnew } = withLinesEnded(cleaned);
    const told: readonly VersionChange[] = names === 0 ? [] : [{ code: 'names-cleaned', values: { names } }];
    const ended: readonly VersionChange[] = lines === 0 ? [] : [{ code: 'lines-ended', values: { lines } }];
    const anew: readonly VersionChange[] =
      wettedAnew === 0 ? [] : [{ code: 'wetted-anew', values: { plantings: wettedAnew } }];
    return {
      document: migrated,
      changes: [...changesSince1(document, DEFAULTS), ...waterChanges(document), ...ended, ...anew, ...told],
    };
  },
};

/** `usual`: the defaults of today. */
export function changesSince1(document: Loose, usual: UsualThen): readonly VersionChange[] {
  return [...rainMethodChange(document, usual), ...targetChange(document, usual), ...rainTotals(document)];
}

/** A method that is written stays. */
function rainMethodChange({ site }: Loose, usual: UsualThen): readonly VersionChange[] {
  const [from, to] = [USUAL_IN_1.rainMethod, usual.rainMethod];
  const isWritten = fieldsIn(fieldsIn(site)['rain'])['method'] !== undefined;
  return isWritten || from === to ? [] : [{ code: 'rain-method', values: { from, to } }];
}

function targetChange({ zones }: Loose, usual: UsualThen): readonly VersionChange[] {
  const [from, to] = [USUAL_IN_1.target, usual.target];
  const plantings = listIn(zones)
    .flatMap((zone) => listIn(fieldsIn(zone)['plantings']))
    .filter((planting) => fieldsIn(planting)['target'] === undefined).length;
  return plantings === 0 || from === to ? [] : [{ code: 'target-depletion', values: { plantings, from, to } }];
}

function rainTotals({ log }: Loose): readonly VersionChange[] {
  const totals = Object.values(fieldsIn(fieldsIn(log)['weeks']));
  const weeks = totals.filter((total) => fieldsIn(total)['rain'] !== undefined).length;
  return weeks === 0 ? [] : [{ code: 'rain-read-through', values: { weeks } }];
}
