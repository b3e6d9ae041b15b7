/** What an element says while there is no season to show, and while a part of it is on its way. */
import { area } from '../area.ts';

export const planElement = {
  empty: 'No plan is open. Open a plan file or start a new plan.',
  loading: 'Reading the plan…',
  computing: 'Working out the season…',
  failed: 'The plan could not be read. The list of what needs attention says what to fix in the file.',
  /** `what`: its address, and the status that the server answered, where it did. */
  notThere: (what: string) => `The plan did not come: ${what}. Check its address.`,
  outside: 'No plan is around this part. Write:',
  noZones: 'This plan has no zones yet. Add a zone, which is one valve with all that it waters.',
  partLoading: 'One moment…',
  partFailed: 'This part could not be loaded. Check the connection, then load the page again.',
  viewFailed:
    'This part cannot be shown: Runnel made a mistake with this plan. The plan is safe and the other parts go on. Undo the last change, or open another plan.',
  autosaveFailed:
    'Your changes are not saved. Save the plan as a file before you leave. Check the connection, then load the page again.',
};

export const planElementWords = area('planElement', planElement);
