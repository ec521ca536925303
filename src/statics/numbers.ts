/** Numbers of the first block; each further one is at least twice as large. */
const firstBlock = 768;

/**
 * Hands out arrays of zeros that lie together in few blocks of memory: a solver has some thirty, and asking for each by
 * itself takes longer than solving.
 */
export class Numbers {
  private block = new Float64Array(firstBlock);
  private used = 0;

  take(count: number): Float64Array {
    if (this.used + count > this.block.length) {
      this.block = new Float64Array(Math.max(2 * this.block.length, count));
      this.used = 0;
    }
    const from = this.used;
    this.used += count;
    return this.block.subarray(from, this.used);
  }

  /** So many numbers, filled in. */
  from<Item>(items: readonly Item[], read: (item: Item) => number): Float64Array {
    const taken = this.take(items.length);
    for (let index = 0; index < items.length; index++) taken[index] = read(items[index]!);
    return taken;
  }
}
