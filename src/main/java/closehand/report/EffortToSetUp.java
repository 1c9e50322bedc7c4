package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.plan.ControlPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How long it takes to set up all that a plan uses, beside what the player said is bearable. The
 * minutes are the catalogue's estimates of practice, added up.
 */
final class EffortToSetUp {
  private static final int MANY_PARTS = 3;

  private EffortToSetUp() {}

  /** One paragraph; nothing where the plan uses nothing. */
  static List<Piece> of(PageInput input, ControlPlan plan) {
    List<Approach> used = used(input.bank(), plan);
    double least = used.stream().mapToDouble(a -> a.setupMinutes().minimum()).sum();
    double most = used.stream().mapToDouble(a -> a.setupMinutes().maximum()).sum();
    if (used.isEmpty()) {
      return List.of();
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Setting this up takes about "
            + Math.round(least)
            + " to "
            + PlayLimit.words(Math.round(most))
            + " the first time (an estimate of practice).");
    OptionalDouble bearable = input.facts().number("setup.maxMin");
    boolean tooLong = bearable.isPresent() && least > bearable.getAsDouble();
    long parts = used.stream().filter(a -> !a.costClasses().contains("0")).count();
    if (tooLong) {
      sentences.add(
          "You said "
              + PlayLimit.words(bearable.getAsDouble())
              + " at most: do it once with help and leave it set up, or begin with one part.");
    } else if (parts > MANY_PARTS) {
      sentences.add("That is " + parts + " separate parts: leave them set up on a board or tray.");
    }
    return List.of(Paragraph.of(String.join(" ", sentences)));
  }

  private static List<Approach> used(Bank bank, ControlPlan plan) {
    return plan.approaches().stream().flatMap(a -> bank.approach(a).stream()).toList();
  }
}
