/** The theme of a grid that is the kit's own, in Handsontable's custom properties: one calm sheet of paper. */

export const THEME_CLASS = 'ht-theme-runnel';

const ARROW =
  'data:image/svg+xml,%3Csvg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"%3E%3Cpath d="m6 4 4 4-4 4" fill="none" stroke="%23000" stroke-width="1.5"/%3E%3C/svg%3E';

/**
 * `thead tr:first-child th`: months stand above the weeks that begin in them, and stay in view while those scroll
 * by.
 */
export const themeStyles = `
.${THEME_CLASS} {
  --ht-font-family: var(--_font);
  --ht-font-size: var(--_size);
  --ht-font-size-small: calc(var(--_size) * 0.87);
  --ht-font-weight: 400;
  --ht-letter-spacing: 0;
  --ht-line-height: 19px;
  --ht-line-height-small: 18px;
  --ht-gap-size: 4px;
  --ht-icon-size: 16px;
  --ht-table-transition: 0s;
  --ht-border-radius: 3px;
  --ht-border-color: var(--_paper);
  --ht-accent-color: var(--_ink);
  --ht-foreground-color: var(--_ink);
  --ht-foreground-secondary-color: var(--_quiet);
  --ht-background-color: var(--_paper);
  --ht-background-secondary-color: var(--_paper);
  --ht-placeholder-color: var(--_quiet);
  --ht-read-only-color: var(--_ink);
  --ht-disabled-color: var(--_quiet);
  --ht-shadow-color: transparent;
  --ht-shadow-x: 0;
  --ht-shadow-y: 0;
  --ht-shadow-blur: 0;
  --ht-shadow-opacity: 0%;
  --ht-cell-horizontal-padding: 6px;
  --ht-cell-vertical-padding: 0.01px;
  --ht-cell-horizontal-border-color: var(--_paper);
  --ht-cell-vertical-border-color: var(--_paper);
  --ht-cell-selection-border-color: var(--_ink);
  --ht-cell-selection-background-color: var(--_ink);
  --ht-cell-autofill-size: 7px;
  --ht-cell-autofill-hit-area-size: 14px;
  --ht-cell-autofill-border-width: 1px;
  --ht-cell-autofill-border-radius: 2px;
  --ht-cell-autofill-border-color: var(--_paper);
  --ht-cell-autofill-background-color: var(--_ink);
  --ht-cell-autofill-fill-border-color: var(--_ink);
  --ht-cell-editor-border-width: 2px;
  --ht-cell-editor-border-color: var(--_ink);
  --ht-cell-editor-foreground-color: var(--_ink);
  --ht-cell-editor-background-color: var(--_paper);
  --ht-cell-editor-shadow-blur-radius: 0;
  --ht-cell-editor-shadow-color: transparent;
  --ht-cell-mobile-handle-size: 12px;
  --ht-cell-mobile-handle-border-width: 1px;
  --ht-cell-mobile-handle-border-radius: 12px;
  --ht-cell-mobile-handle-border-color: var(--_ink);
  --ht-cell-mobile-handle-background-color: var(--_ink);
  --ht-cell-mobile-handle-background-opacity: 40%;
  --ht-cell-selection-handle-size: 8px;
  --ht-cell-selection-handle-length: 16px;
  --ht-cell-selection-handle-border-width: 1px;
  --ht-cell-selection-handle-border-radius: 12px;
  --ht-cell-selection-handle-border-color: var(--_ink);
  --ht-cell-selection-handle-background-color: var(--_paper);
  --ht-header-font-weight: 500;
  --ht-header-foreground-color: var(--_ink);
  --ht-header-background-color: var(--_paper);
  --ht-header-highlighted-shadow-size: 0;
  --ht-header-highlighted-foreground-color: var(--_ink);
  --ht-header-highlighted-background-color: color-mix(in oklab, var(--_ink) 8%, var(--_paper));
  --ht-header-active-border-color: var(--_ink);
  --ht-header-active-foreground-color: var(--_paper);
  --ht-header-active-background-color: var(--_ink);
  --ht-header-row-foreground-color: var(--_ink);
  --ht-header-row-background-color: var(--_paper);
  --ht-header-row-highlighted-foreground-color: var(--_ink);
  --ht-header-row-highlighted-background-color: color-mix(in oklab, var(--_ink) 8%, var(--_paper));
  --ht-header-row-active-foreground-color: var(--_paper);
  --ht-header-row-active-background-color: var(--_ink);
  --ht-row-header-odd-background-color: var(--_paper);
  --ht-row-header-even-background-color: var(--_paper);
  --ht-row-cell-odd-background-color: var(--_paper);
  --ht-row-cell-even-background-color: var(--_paper);
  --ht-menu-border-width: 1px;
  --ht-menu-border-radius: 4px;
  --ht-menu-border-color: var(--_quiet);
  --ht-menu-horizontal-padding: 0;
  --ht-menu-vertical-padding: 6px;
  --ht-menu-item-horizontal-padding: 14px;
  --ht-menu-item-vertical-padding: 6px;
  --ht-menu-item-hover-color: var(--_ink);
  --ht-menu-item-hover-color-opacity: 14%;
  --ht-menu-item-active-color: var(--_ink);
  --ht-menu-item-active-color-opacity: 18%;
  --ht-menu-shadow-x: 0;
  --ht-menu-shadow-y: 4px;
  --ht-menu-shadow-blur: 14px;
  --ht-menu-shadow-color: #000;
  --ht-menu-shadow-opacity: 14%;
  --ht-scrollbar-border-radius: 8px;
  --ht-scrollbar-track-color: var(--_paper);
  --ht-scrollbar-thumb-color: var(--_quiet);
  --ht-resize-indicator-color: var(--_quiet);
  --ht-move-indicator-color: var(--_ink);
  --ht-hidden-indicator-color: var(--_quiet);
}

.${THEME_CLASS} .htContextMenu .htSubmenu .htItemWrapper::after {
  inline-size: 16px;
  block-size: 16px;
  background: currentcolor;
  mask: url('${ARROW}') center / contain no-repeat;
}

@media (forced-colors: active) {
  .${THEME_CLASS} {
    --ht-disabled-color: GrayText;
  }

  .${THEME_CLASS} .htContextMenu .htSubmenu .htItemWrapper::after {
    background: CanvasText;
    forced-color-adjust: none;
  }
}

.${THEME_CLASS} .handsontable thead th {
  font-size: 0.87em;
}

.${THEME_CLASS} .handsontable thead th .relative {
  padding-inline: 3px;
}

.${THEME_CLASS} .handsontable thead th .colHeader {
  font-size: calc(var(--_size) * 0.87);
}

.${THEME_CLASS} .handsontable thead th:first-child {
  text-align: start;
}

.${THEME_CLASS} td.runnel-total:not(.runnel-low) .runnel-detail {
  display: none;
}

.${THEME_CLASS} .handsontable thead tr:first-child th {
  overflow: visible;
  font-weight: 650;
  text-align: start;
}

.${THEME_CLASS} :is(.ht_clone_top_inline_start_corner, .ht_clone_inline_start) {
  --_frozen: 0;
}

.${THEME_CLASS} .handsontable thead tr:first-child th .relative {
  position: sticky;
  inset-inline-start: var(--_frozen, 0);
  display: inline-block;
  overflow: visible;
  padding-inline: 5px;
}
`;
