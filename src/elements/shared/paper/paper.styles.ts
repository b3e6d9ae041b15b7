import { css } from 'lit';

/** The sheets themselves: black on white, as printed. On screen they are shown smaller and lie on a ground. */
export const sheetStyles = css`
  html {
    background: #d9d9d9;
    color-scheme: only light;
  }

  body {
    display: grid;
    gap: 0.25in;
    justify-content: center;
    margin: 0;
    padding: 0.25in;
    color: #000;
    font: 400 11pt/1.25 system-ui, sans-serif;
    font-variant-numeric: tabular-nums lining-nums;
  }

  .page {
    position: relative;
    box-sizing: border-box;
    overflow: hidden;
    inline-size: var(--width);
    block-size: var(--height);
    padding: 0.5in;
    background: #fff;
    break-after: page;
  }

  .page.measured {
    position: absolute;
    visibility: hidden;
    block-size: auto;
    overflow: visible;
  }

  h1,
  p {
    margin: 0;
  }

  h1 {
    font-size: 24pt;
    line-height: 1.1;
  }

  .garden {
    font-size: 14pt;
    font-weight: 600;
  }

  .title,
  .facts,
  .key {
    padding-block-end: 8pt;
  }

  .key {
    font-size: 9pt;
  }

  .row {
    display: grid;
    border-block-end: 0.5pt solid #000;
    break-inside: avoid;
    overflow-wrap: anywhere;
  }

  .heads {
    border-block-end-width: 1.5pt;
    font-size: 9.5pt;
    align-items: end;
  }

  .row > span {
    min-inline-size: 0;
    padding: 3pt 4pt 3pt 0;
  }

  small {
    font-size: 8.5pt;
  }

  .end {
    text-align: end;
  }

  .by-hand {
    text-decoration: underline;
  }

  .box {
    display: inline-block;
    box-sizing: border-box;
    inline-size: 24pt;
    block-size: 24pt;
    border: 1.25pt solid #000;
    border-radius: 2pt;
  }

  .box.held {
    background: linear-gradient(to top right, transparent 48.5%, #000 48.5% 51.5%, transparent 51.5%);
    border-width: 0.75pt;
  }

  .pencil {
    display: block;
    block-size: 13pt;
    inline-size: 31pt;
    margin: -2pt auto 1pt;
    border-block-end: 0.5pt solid #000;
  }

  .foot {
    position: absolute;
    inset: auto 0.5in 0.35in;
    font-size: 8pt;
    line-height: 1.3;
  }

  .foot .number {
    text-align: end;
  }

  .review {
    grid-template-columns: 1.6fr repeat(6, minmax(0, 1fr));
    font-size: 10pt;
  }

  .review.sum {
    border-block-end-width: 1.5pt;
  }

  h2 {
    margin: 10pt 0 4pt;
    font-size: 13pt;
  }

  .worst {
    margin: 0;
    padding-inline-start: 16pt;
  }

  .worst li {
    padding-block-end: 4pt;
  }

  .weeks {
    grid-template-columns: 1.1fr repeat(4, minmax(0, 1fr));
    font-size: 10pt;
  }

  .weeks > span {
    padding-inline-end: 9pt;
  }

  .weeks small {
    display: block;
  }

  .season {
    grid-template-columns: 96pt;
    grid-auto-columns: minmax(0, 1fr);
    grid-auto-flow: column;
    font-size: 9pt;
  }

  .season.heads {
    padding-block-start: 10pt;
  }

  .season > span {
    padding: 2pt 3pt 2pt 0;
    text-align: end;
  }

  .season > span:first-child {
    text-align: start;
  }

  .season > span:not(:first-child) small {
    display: block;
    font-size: 7pt;
  }

  .one {
    grid-template-columns: 84pt minmax(0, 1fr) 88pt 52pt 58pt 46pt;
    font-size: 10pt;
  }

  .one small {
    display: block;
  }

  .one > :last-child {
    padding-inline-start: 8pt;
  }

  .attention {
    grid-template-columns: 30pt minmax(0, 1fr);
    align-items: start;
    padding-block: 5pt;
  }

  .attention .box {
    inline-size: 16pt;
    block-size: 16pt;
  }

  .attention small {
    display: block;
    font-size: 9.5pt;
  }

  @media print {
    html {
      background: none;
    }

    body {
      display: block;
      padding: 0;
      zoom: 1 !important;
    }

    .page:last-child {
      break-after: auto;
    }
  }
`;
