import { readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json. */
export const projectRoot: string = fileURLToPath(new URL('../..', import.meta.url));

/** Every file under `folder` of the project whose name ends in `ending`, as sorted paths from the root with `/`. */
export function filesUnder(folder: string, ending: string): readonly string[] {
  return readdirSync(join(projectRoot, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => join(entry.parentPath, entry.name).slice(projectRoot.length).split(sep).join('/'))
    .sort();
}
