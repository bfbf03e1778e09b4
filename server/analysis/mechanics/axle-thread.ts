/** A thread as far as a cone needs it, mm. */
export interface AxleThread {
  readonly diameter: number;
  readonly pitch: number;
}

/** `M9x1`, or `3/8x26` in inches and threads to the inch; null for what is neither. */
export function readAxleThread(written: string): AxleThread | null {
  const metric = /^\s*M\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*$/i.exec(written);
  if (metric) return positive(Number(metric[1]), Number(metric[2]));
  const inch = /^\s*(\d+)\/(\d+)\s*(?:in|")?\s*[x×-]\s*(\d+)\s*(?:tpi)?\s*$/i.exec(written);
  return inch ? positive((25.4 * Number(inch[1])) / Number(inch[2]), 25.4 / Number(inch[3])) : null;
}

function positive(diameter: number, pitch: number): AxleThread | null {
  return 0 < pitch && pitch < diameter && Number.isFinite(diameter) ? { diameter, pitch } : null;
}
