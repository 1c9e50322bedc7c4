package closehand.rules;

import closehand.bank.Rule;
import java.util.List;

/**
 * What came of one rule.
 *
 * @param rule the rule
 * @param outcome whether it fires
 * @param supportedBy the facts that settle it, in bank order; for an open rule those known so far
 * @param waitsFor the facts an open rule still waits for, in bank order; empty otherwise
 * @param heldBack whether it would apply but its "unless" keeps it from firing
 */
public record Finding(
    Rule rule, Outcome outcome, List<String> supportedBy, List<String> waitsFor, boolean heldBack) {
  public Finding {
    supportedBy = FactNames.unchanging(supportedBy);
    waitsFor = FactNames.unchanging(waitsFor);
  }
}
