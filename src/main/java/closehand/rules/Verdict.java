package closehand.rules;

import java.util.Optional;

/**
 * Which suggestion leads, and how surely.
 *
 * @param leader the id of the leading approach, settings apart; empty if none is suggested or all
 *     is withheld
 * @param firm whether no open answer can change that and no stop is open
 * @param withheld whether suggestions wait for a health check
 */
public record Verdict(Optional<String> leader, boolean firm, boolean withheld) {
  /** Whether the same suggestion leads, or all is withheld in both. */
  public boolean sameLead(Verdict other) {
    return leader.equals(other.leader) && withheld == other.withheld;
  }
}
