/** What stands around the sheet, fetched with it. */
import { gridPrintStyles } from './grid-print.styles.ts';
import { toolsStyles } from './grid-tools.styles.ts';

export { keyTemplate } from './grid-key.ts';
export { printTemplate } from './print-template.ts';
export { toolsTemplate } from './tools-template.ts';

export const aroundStyles = [toolsStyles, gridPrintStyles];
