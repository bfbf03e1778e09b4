/** `M12x1.5`: outside diameter and pitch, mm; the coarse pitch is not guessed. */
export function readThread(written: string): { readonly thread: number; readonly pitch: number } | null {
  const match = /^\s*M\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*$/i.exec(written);
  return match ? { thread: Number(match[1]), pitch: Number(match[2]) } : null;
}
