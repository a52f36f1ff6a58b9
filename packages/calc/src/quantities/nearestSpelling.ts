/** How many characters two texts share at their beginning and at their end, capitals ignored. */
function likeness(one: string, other: string): number {
  const shortest = Math.min(one.length, other.length);
  let front = 0;
  while (front < shortest && one[front] === other[front]) front += 1;
  let back = 0;
  while (back < shortest - front && one[one.length - 1 - back] === other[other.length - 1 - back]) back += 1;
  return front + back - Math.abs(one.length - other.length) / 2;
}

/** The candidate most like `written`, or undefined when none shares more than half of it. The first of equals wins. */
export function nearestSpelling(written: string, candidates: readonly string[]): string | undefined {
  const folded = written.toLowerCase();
  let best: string | undefined;
  let score = folded.length / 2;
  for (const candidate of candidates) {
    const likes = likeness(folded, candidate.toLowerCase());
    if (likes > score) {
      best = candidate;
      score = likes;
    }
  }
  return best;
}
