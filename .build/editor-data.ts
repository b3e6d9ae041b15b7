// Writes what is read off the elements' class comments: `node --import ./.build/run-ts.mjs .build/editor-data.ts`.
import { writeEditorFiles } from './steps/editor-data.ts';

await writeEditorFiles();
