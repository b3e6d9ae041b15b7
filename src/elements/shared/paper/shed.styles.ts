import { css } from 'lit';

/** This week for the shed door. */
export const shedStyles = css`
  .shed-title {
    display: flex;
    justify-content: space-between;
    align-items: end;
    padding-block-end: 4pt;
  }

  .shed-title .garden {
    font-size: 20pt;
  }

  .shed-title h1 {
    font-size: 36pt;
  }

  .how {
    font-size: 11pt;
    text-align: end;
  }

  .shed {
    grid-template-columns: minmax(0, 1fr) 58pt 46pt repeat(7, 39pt);
  }

  .across .shed {
    grid-template-columns: minmax(0, 1fr) 72pt 56pt repeat(7, 56pt);
  }

  .shed > span {
    padding-block: 3pt;
  }

  .shed .zone {
    font-size: 15pt;
    line-height: 1.15;
  }

  .shed .top > small,
  .shed .end > small {
    display: block;
    font-size: 10pt;
    font-weight: 400;
  }

  .shed .end > small {
    margin-inline-start: -80pt;
    white-space: nowrap;
  }

  .shed .start {
    font-size: 13pt;
    line-height: 1.5;
    white-space: nowrap;
  }

  .shed .run {
    padding-inline-end: 8pt;
    font-size: 20pt;
    font-weight: 700;
    line-height: 1.05;
  }

  .shed.heads .end {
    padding-inline-end: 8pt;
  }

  .shed .idle {
    grid-column: span 2;
    font-size: 11pt;
  }

  .shed .day {
    display: grid;
    align-content: start;
    justify-items: center;
    padding-inline: 0;
    border-inline-start: 0.25pt solid #999;
    text-align: center;
  }

  .shed .day:nth-child(4) {
    border: 0;
  }

  .shed .idle + .day {
    border: 0;
  }

  .shed.heads .day {
    border: 0;
  }

  .shed.heads .day b {
    display: block;
    font-size: 15pt;
  }

  .shed .turn {
    display: block;
    block-size: 17pt;
    overflow: hidden;
    font-size: 11pt;
    line-height: 17pt;
  }

  .shed .zone .turn {
    block-size: auto;
    min-block-size: 17pt;
    padding-inline-start: 12pt;
  }

  .shed .top {
    display: block;
    min-block-size: 37pt;
  }

  .shed .wide {
    grid-column: span 3;
    font-size: 15pt;
  }

  .gauge {
    display: block;
    inline-size: 33pt;
    block-size: 26pt;
    border: 0.75pt solid #000;
    border-radius: 2pt;
  }

  .notes {
    font-size: 11pt;
  }

  .notes .line {
    display: block;
    block-size: 20pt;
    border-block-end: 0.5pt solid #000;
  }
`;
