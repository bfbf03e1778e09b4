/**
 * Looks of a drawing printed on white paper. A fault is dark red, and heavier and marked by its number, so that
 * a print in black and white still shows it.
 */
export const sheetStyle = [
  '@page{size:A4 landscape;margin:0}',
  '.hw-drawing{color:#000;font-family:"Liberation Sans",Arial,Helvetica,"DejaVu Sans",sans-serif}',
  '.hw-hatch{stroke:#444}',
  '.hw-dimension,.hw-leader{stroke:#000}',
  '.hw-assumed{stroke:#333}',
  '.hw-strong{font-weight:bold}',
  '.hw-fault,.hw-warning{color:#a00000}',
  '.hw-fault .hw-dimension,.hw-fault .hw-leader,.hw-warning .hw-dimension,.hw-warning .hw-leader{stroke:#a00000}',
  '.hw-part.hw-fault .hw-outline{stroke:#a00000;stroke-width:.75}',
  '.hw-part.hw-warning .hw-outline{stroke:#a00000;stroke-width:.65}',
  '.hw-size.hw-fault .hw-dimension{stroke-width:.5}',
].join('');
