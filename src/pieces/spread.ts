/** Moves places along a line apart until neighbours keep a distance, each as little as the crowd allows. */

interface Cluster {
  readonly places: readonly number[];
  readonly from: number;
}

/** `places` must ascend. Returns one place for each, at least `gap` apart, in the same order. */
export function spread(places: readonly number[], gap: number): number[] {
  const clusters: Cluster[] = [];
  for (const place of places) {
    let cluster = centred([place], gap);
    while (clusters.length > 0 && endOf(clusters.at(-1)!, gap) + gap > cluster.from) {
      cluster = centred([...clusters.pop()!.places, ...cluster.places], gap);
    }
    clusters.push(cluster);
  }
  return clusters.flatMap(({ places: own, from }) => own.map((_, i) => from + i * gap));
}

/** A run of evenly spaced places whose mean is the mean of what they were: the least squares of their moves. */
function centred(places: readonly number[], gap: number): Cluster {
  const mean = places.reduce((sum, place) => sum + place, 0) / places.length;
  return { places, from: mean - ((places.length - 1) * gap) / 2 };
}

function endOf({ places, from }: Cluster, gap: number): number {
  return from + (places.length - 1) * gap;
}
