import { createContext } from '@lit/context';

/**
 * The week that a reader points at in some view, for the others to show too. A context of its own, since it changes with
 * every movement of the pointer and few views care.
 */
export const pointedWeekContext = createContext<number | undefined>(Symbol('runnel-pointed-week'));
