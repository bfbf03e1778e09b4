/** Numbers as they are said to a person: only the digits that mean something, with their unit. */

const fixed = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? (0).toFixed(digits) : text.replace('-', '−');
};

/** A length without its unit, hundredths of a millimetre, no trailing zeros beyond the decimals asked: `62.06`. */
export function length(value: number, digits = 2): string {
  return fixed(value, digits);
}

/** `62.06 mm` */
export function millimetres(value: number, digits = 2): string {
  return `${fixed(value, digits)} mm`;
}

/** A diameter or nominal as a drawing prints it, no trailing zeros: `26`, `28.575`. */
export function plain(value: number): string {
  return String(Number(value.toFixed(4)));
}

/** A length in mm said in micrometres: `12 µm`. */
export function micrometres(value: number): string {
  return `${fixed(value * 1000, 0)} µm`;
}

/** `+0.12 mm`, `−0.05 mm`. */
export function signed(value: number, digits = 2): string {
  const size = fixed(Math.abs(value), digits);
  if (Number(size) === 0) return size;
  return `${value < 0 ? '−' : '+'}${size}`;
}

/** A share of builds: `0.3 %`, `under 0.1 %`, `all`. */
export function share(value: number): string {
  if (value <= 0) return 'none';
  if (1 <= value) return 'all';
  const percent = value * 100;
  if (percent < 0.1) return 'under 0.1 %';
  if (99.9 < percent) return 'over 99.9 %';
  // Near all as near none a tenth matters: 99.6 % is not 100 %.
  return `${percent < 10 || 99 < percent ? percent.toFixed(1) : percent.toFixed(0)} %`;
}

/** `99.90 to 100.10 mm` */
export function range(lo: number, hi: number, digits = 2): string {
  return `${fixed(lo, digits)} to ${fixed(hi, digits)} mm`;
}

/** A force in N with three figures: `17.5 N`, `5.08 kN`. */
export function force(value: number): string {
  return Math.abs(value) < 999.5 ? `${threeFigures(value)} N` : `${threeFigures(value / 1000)} kN`;
}

/** A spoke's tension as builders say it, in newtons with three figures: `1250 N`. */
export function tension(value: number): string {
  return `${Number(value.toPrecision(3))} N`.replace('-', '−');
}

/** A stress in MPa with three figures: `892 MPa`. */
export function stress(value: number): string {
  return `${threeFigures(value)} MPa`;
}

function threeFigures(value: number): string {
  return String(Number(value.toPrecision(3))).replace('-', '−');
}
