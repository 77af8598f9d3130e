/** Where each line of a text begins, for finding the line of any place quickly. Lines end with `\n`. */
export class Lines {
  private readonly text: string;
  private starts: number[] | null = null;

  constructor(text: string) {
    this.text = text;
  }

  /** The line of a place: its number from 0, where it begins, and its characters without the line end. */
  at(offset: number): { index: number; start: number; source: string } {
    this.starts ??= lineStarts(this.text);
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    const start = this.starts[low] ?? 0;
    const next = this.starts[low + 1];
    return { index: low, start, source: this.text.slice(start, next === undefined ? undefined : next - 1) };
  }
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}
