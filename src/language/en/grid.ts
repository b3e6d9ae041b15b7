/** What stands in the sheet's place until it is there, and where it cannot be. */
import { area } from '../area.ts';

export const grid = {
  noMatch: 'No zone matches. Clear the search.',
  loading: 'Laying out the sheet…',
  inShadow: 'The sheet must stand in the page itself.',
  failed: 'The sheet could not be loaded. Check the connection, then load the page again.',

  noKey: {
    title: 'The sheet needs a license key.',
    why: 'It uses Handsontable, a spreadsheet that asks every page for a key.',
    free: 'For your own garden, a club, or trying things out, its terms of non-commercial use and evaluation apply. Then write:',
    /** Markup, as the page's owner copies it. */
    example: '<runnel-grid license-key="non-commercial-and-evaluation"></runnel-grid>',
    bought:
      'A business needs a key of its own from Handsontable, and so does anyone who runs a garden for pay or for a council.',
  },
};

export const gridWords = area('grid', grid, { noKey: { title: 'The sheet needs a licence key.' } });
