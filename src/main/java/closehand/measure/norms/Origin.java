package closehand.measure.norms;

/**
 * Where a table comes from.
 *
 * @param id its name in the file
 * @param strength what it is about
 * @param unit of its figures
 * @param source author, year, journal
 * @param status how the figures were confirmed
 * @param people who was measured
 */
public record Origin(
    String id, Strength strength, Unit unit, String source, String status, String people) {}
