import { createContext } from '@lit/context';
import type { Frame } from './events/frame-event.ts';

/** The part of the season that the sheet of a plan shows, or was last asked to show; undefined where there is no sheet. */
export const frameContext = createContext<Frame | undefined>(Symbol('runnel-frame'));
