/** What an element says while there is no season to show, and while a part of it is on its way. */
import { area } from '../area.ts';

export const planElement = {
  empty: 'No plan is open. Open a plan file, or start a new plan, and its season appears here.',
  loading: 'Reading the plan…',
  failed: 'The plan could not be read. The list of what needs attention says what to fix in the file.',
  noZones: 'This plan has no zones yet. Add a zone, which is one valve with all that it waters, to see its season.',
  partLoading: 'One moment…',
  partFailed: 'This part could not be loaded. Check the connection, then load the page again.',
  autosaveFailed:
    'The part of the page that saves your changes could not be loaded. Save the plan as a file before you leave, and load the page again when the connection is back.',
};

export const planElementWords = area('planElement', planElement);
