package closehand.interview;

import java.util.List;

/**
 * What was suggested at the end of a sitting, kept as it was then: banks and rules change, what
 * somebody was told does not.
 *
 * @param at when, as an ISO date and time with zone
 * @param bankVersion the version of the bank
 * @param fingerprint the bank's fingerprint
 * @param withheld whether suggestions waited for a health check
 * @param stops codes of the stops that stood
 * @param cautions codes of the other cautions
 * @param ideas the approaches suggested, best first
 */
public record Suggested(
    String at,
    String bankVersion,
    String fingerprint,
    boolean withheld,
    List<String> stops,
    List<String> cautions,
    List<Idea> ideas) {
  public Suggested {
    stops = List.copyOf(stops);
    cautions = List.copyOf(cautions);
    ideas = List.copyOf(ideas);
  }

  /**
   * One approach suggested.
   *
   * @param id its id in the bank
   * @param title its name as it was said
   * @param points the points for it
   */
  public record Idea(String id, String title, int points) {}

  /** Whether the same was suggested, whenever that was. */
  public boolean says(Suggested other) {
    return withheld == other.withheld
        && stops.equals(other.stops)
        && cautions.equals(other.cautions)
        && ideas.equals(other.ideas);
  }
}
