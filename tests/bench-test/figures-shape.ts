/** The keys of `figures --json` that the bench reads; lengths in mm. */

export interface BenchFigures {
  capacityLitres: number;
  stave: {
    count: number;
    blankThickness: number;
    outerLength: number;
    innerLength: number;
    bilgeWidth: number;
    endWidth: { top: number; bottom: number };
    endCutDegrees: { top: number; bottom: number };
    bevelDegrees: { bilge: number; top: number; bottom: number };
    bladeTiltDegrees?: number;
    fixedBevelGap: number;
    outerStretchPercent: number;
    stations: { s: number; z: number; width: number; bevelDegrees: number; thickness: number }[];
  };
  heads: { top?: HeadFigures | null; bottom: HeadFigures };
  closesAt?: number;
  staves?: { width: number; alphaDegrees: number; blankThickness: number }[];
}

interface HeadFigures {
  diameter: number;
  crozeRadius: number;
  chimeOpening: number;
}
