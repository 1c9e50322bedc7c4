package closehand.cli;

import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.report.LoadText;
import closehand.strain.Accepted;
import closehand.strain.Body;
import closehand.strain.OwnLimits;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what people say about the load of a plan on the command line. */
final class SaidAboutLoad {
  private SaidAboutLoad() {}

  /**
   * Reads efforts such as {@code R.T=3} and acceptances such as {@code R.T=NAME: REASON}.
   *
   * @return empty after saying on {@code error} what is wrong and how to mend it
   */
  static Optional<LoadText.Rated> read(
      List<String> efforts, List<String> accepts, PrintStream error) {
    List<Problem> problems = new ArrayList<>();
    Body body = Body.UNKNOWN;
    for (String one : efforts) {
      int equals = one.indexOf('=');
      String part = equals < 0 ? one : one.substring(0, equals);
      double rating = number(equals < 0 ? "" : one.substring(equals + 1));
      body = body.rated(Where.file("--effort"), part.strip(), rating, problems);
    }
    List<Accepted> accepted = new ArrayList<>();
    for (String one : accepts) {
      int equals = one.indexOf('=');
      int colon = one.indexOf(':', equals + 1);
      String part = equals < 0 ? one : one.substring(0, equals);
      String by = equals < 0 || colon < 0 ? "" : one.substring(equals + 1, colon);
      String reason = colon < 0 ? "" : one.substring(colon + 1);
      Accepted.of(Where.file("--accept"), part.strip(), by, reason, problems)
          .ifPresent(accepted::add);
    }
    problems.forEach(p -> error.println(p.where() + ": " + p.what() + " " + p.mend()));
    return problems.isEmpty()
        ? Optional.of(new LoadText.Rated(body.effort(), accepted))
        : Optional.empty();
  }

  /**
   * The limits with an interval of pressure relief, where one was said.
   *
   * @return empty after saying on {@code error} what is wrong and how to mend it
   */
  static Optional<OwnLimits> relief(OwnLimits limits, Optional<String> minutes, PrintStream error) {
    List<Problem> problems = new ArrayList<>();
    OwnLimits said =
        minutes
            .map(m -> limits.relieving(Where.file("--relief"), number(m), problems))
            .orElse(limits);
    problems.forEach(p -> error.println(p.where() + ": " + p.what() + " " + p.mend()));
    return problems.isEmpty() ? Optional.of(said) : Optional.empty();
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
