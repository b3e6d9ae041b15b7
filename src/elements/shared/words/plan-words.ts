/** What an element says while there is no season to show. */
export const planWords = {
  empty: 'No plan is open. Open a plan file, or start a new plan, and its season appears here.',
  loading: 'Reading the plan…',
  partLoading: 'One moment…',
  partFailed: 'This part could not be loaded. Check the connection, then load the page again.',
  failed: 'The plan could not be read. The list of what needs attention says what to put right in the file.',
  noZones: 'This plan has no zones yet. Add a zone, which is one valve with all that it waters, to see its season.',
  notKept:
    'The part of the page that keeps your changes could not be loaded. Save the plan as a file before you leave, and load the page again when the connection is back.',
} as const;
