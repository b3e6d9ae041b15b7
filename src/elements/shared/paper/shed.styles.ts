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
    grid-template-columns: minmax(0, 1fr) 61pt 46pt repeat(7, 39pt);
  }

  .across .shed {
    grid-template-columns: minmax(0, 1fr) 72pt 56pt repeat(7, 56pt);
  }

  .across.dense .shed {
    grid-template-columns: minmax(0, 1fr) 126pt 62pt repeat(7, 50pt);
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
    line-height: 21pt;
    white-space: nowrap;
  }

  .shed .run {
    padding-inline-end: 8pt;
    font-size: 20pt;
    font-weight: 700;
    line-height: 1.05;
    white-space: nowrap;
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

  .shed .start > span {
    display: block;
  }

  .shed .run > .times {
    display: none;
  }

  /* Low rows, where a week would be more than a page else. */
  .dense .shed > span {
    padding-block: 2pt;
  }

  .dense .shed .zone {
    font-size: 14pt;
  }

  .dense .shed .start {
    line-height: 18.9pt;
  }

  .dense .shed .run {
    font-size: 18pt;
  }

  .dense .box {
    inline-size: 20pt;
    block-size: 20pt;
  }

  .dense .shed .top {
    min-block-size: 31pt;
  }

  .dense .shed .turn {
    min-block-size: 13pt;
    font-size: 10pt;
    line-height: 13pt;
  }

  .dense .shed .day > .turn {
    block-size: 13pt;
  }

  /* A title on one line, a line beside its box, start times in two columns. */
  .across.dense .shed-title > div {
    display: flex;
    gap: 12pt;
    align-items: baseline;
  }

  .across.dense .shed-title h1 {
    font-size: 26pt;
  }

  .across.dense .how {
    font-size: 9pt;
  }

  .across.dense .shed:not(.heads, .rain) .day {
    grid-template-columns: 20pt 26pt;
    justify-content: center;
    column-gap: 2pt;
  }

  .across.dense .day > .box {
    grid-row: span 2;
  }

  .across.dense .day > small {
    block-size: 9pt;
    font-size: 7.5pt;
    line-height: 9pt;
    white-space: nowrap;
  }

  .across.dense .pencil {
    grid-column: 2;
    grid-row: 2;
    inline-size: 26pt;
    margin: 0;
    block-size: 11pt;
  }

  .across.dense .day > .turn {
    grid-column: span 2;
    justify-self: center;
  }

  .across.dense .shed .top {
    min-block-size: 20pt;
  }

  .across.dense .shed .start {
    display: grid;
    grid-template-columns: 61pt 1fr;
    align-content: start;
    line-height: 1.25;
  }

  .across.dense .shed .end > small {
    margin: 0;
    white-space: normal;
  }

  .across.dense .again {
    display: none;
  }

  .across.dense .shed .run > .times {
    display: inline;
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
