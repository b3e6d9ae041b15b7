/** What the one script of a page says itself. */
import type { Language } from '../language.ts';

export const page = {
  notLoaded: 'This part could not be loaded. Check the connection, then load the page again.',
  /** After a name that there is not, before those that there are. */
  only: 'There is only:',
};

/** No `area`: the page's script is to stay small, and these words are the same in every English. */
export const pageWords = ({ areas }: Language): typeof page => (areas?.['page'] ?? page) as typeof page;
