import { css } from 'lit';

/** The sheet as a table on paper. */
export const gridPrintStyles = css`
  .runnel-grid__print {
    display: none;
  }

  @media print {
    .runnel-grid__print {
      display: block;
      font-size: 8pt;
      line-height: 1.25;
    }

    .runnel-grid__print table {
      display: table !important;
      overflow: visible !important;
      inline-size: 100%;
      max-inline-size: none !important;
      margin: 0 0 1rem !important;
      border-collapse: collapse !important;
    }

    .runnel-grid__print :is(table, thead, tbody, tr, th, td) {
      float: none !important;
      max-inline-size: none !important;
    }

    .runnel-grid__print thead {
      display: table-header-group !important;
    }

    .runnel-grid__print tbody {
      display: table-row-group !important;
    }

    .runnel-grid__print tr {
      display: table-row !important;
      break-inside: avoid;
    }

    .runnel-grid__print :is(th, td) {
      display: table-cell !important;
      inline-size: auto !important;
      padding: 1pt 3pt;
      border: 0;
      border-block-end: 0.5pt solid currentcolor;
      background: none;
      color: inherit;
      font-size: inherit;
      letter-spacing: normal;
      text-transform: none;
      text-align: end;
      vertical-align: top;
    }

    .runnel-grid__print th {
      font-weight: 400;
    }

    .runnel-grid__print th:first-child {
      text-align: start;
    }

    .runnel-print-planting th:first-child {
      padding-inline-start: 10pt;
    }
  }
`;
