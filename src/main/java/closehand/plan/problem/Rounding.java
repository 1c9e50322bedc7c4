package closehand.plan.problem;

/** Rounds a sum once, and its terms so that they still add up. */
final class Rounding {
  private Rounding() {}

  /** Terms in parts of a point, rounded half up as a sum; the largest term takes what is left. */
  static PlacementCost of(long partsOfPoint, long[] terms, long toggle, long extra) {
    long sum = 0;
    long floors = 0;
    int largest = 0;
    long[] points = new long[terms.length];
    for (int i = 0; i < terms.length; i++) {
      sum = Math.addExact(sum, terms[i]);
      points[i] = terms[i] / partsOfPoint;
      floors += points[i];
      largest = terms[i] > terms[largest] ? i : largest;
    }
    long whole = sum / partsOfPoint + (2 * (sum % partsOfPoint) >= partsOfPoint ? 1 : 0);
    points[largest] += whole - floors;
    return new PlacementCost(points[0], points[1], points[2], points[3], points[4], toggle, extra);
  }
}
