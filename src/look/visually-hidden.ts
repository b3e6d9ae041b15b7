/** Not seen, but read aloud. */
export const visuallyHidden = `
  position: absolute;
  overflow: hidden;
  inline-size: 1px;
  block-size: 1px;
  margin: -1px;
  clip-path: inset(50%);
  white-space: nowrap;
`;
