package closehand.cli;

import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.strain.Accepted;
import closehand.strain.OwnLimits;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what people say about the load of a plan on the command line. */
final class SaidAboutLoad {
  private final List<Problem> problems = new ArrayList<>();
  private OwnLimits limits;

  private SaidAboutLoad(OwnLimits before) {
    this.limits = before;
  }

  /**
   * The limits with efforts such as {@code R.T=3}, an interval of pressure relief and acceptances
   * such as {@code R.T=NAME: REASON} in place of what was said before; a part with nothing behind
   * its equals sign is taken back.
   *
   * @return empty after saying on {@code error} what is wrong and how to mend it
   */
  static Optional<OwnLimits> in(OwnLimits before, PlanCommand.Wanted wanted, PrintStream error) {
    SaidAboutLoad said = new SaidAboutLoad(before);
    wanted.efforts().forEach(said::effort);
    wanted.relief().ifPresent(said::relief);
    wanted.accepts().forEach(said::accept);
    said.problems.forEach(p -> error.println(p.where() + ": " + p.what() + " " + p.mend()));
    return said.problems.isEmpty() ? Optional.of(said.limits) : Optional.empty();
  }

  private void effort(String one) {
    int equals = one.indexOf('=');
    String part = part(one, equals);
    if (isTakenBack(one, equals) && limits.effort().containsKey(part)) {
      limits = limits.withoutEffort(part);
    } else {
      double rating = number(equals < 0 ? "" : one.substring(equals + 1));
      limits = limits.rated(Where.file("--effort"), part, rating, problems);
    }
  }

  private void relief(String minutes) {
    limits = limits.relieving(Where.file("--relief"), number(minutes), problems);
  }

  private void accept(String one) {
    int equals = one.indexOf('=');
    String part = part(one, equals);
    if (isTakenBack(one, equals) && limits.acceptedParts().contains(part)) {
      limits = limits.withoutAccepted(part);
      return;
    }
    int colon = one.indexOf(':', equals + 1);
    String by = equals < 0 || colon < 0 ? "" : one.substring(equals + 1, colon);
    String reason = colon < 0 ? "" : one.substring(colon + 1);
    Accepted.of(Where.file("--accept"), part, by, reason, problems)
        .ifPresent(a -> limits = limits.accepting(a));
  }

  private static String part(String one, int equals) {
    return (equals < 0 ? one : one.substring(0, equals)).strip();
  }

  private static boolean isTakenBack(String one, int equals) {
    return equals > 0 && one.substring(equals + 1).isBlank();
  }

  /** The number, or none that is one. */
  private static double number(String text) {
    try {
      return Double.parseDouble(text.strip());
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
