package closehand.report.practice;

import closehand.measure.practice.Findings;
import closehand.measure.practice.Findings.About;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What practice found of an input, said to the player: differences only, and how sure they are. */
final class FindingWords {
  private static final double HUNDRED = 100;
  private static final int TENS = 10;

  private FindingWords() {}

  /** One sentence or more about an input. */
  static String of(Findings.OfInput input) {
    List<String> sentences = new ArrayList<>();
    sentences.add(misses(input));
    if (input.timed() > 0) {
      sentences.add(difference(input.difference()));
    }
    if (sure(input.drop()) && input.drop().value() > 0) {
      sentences.add(
          "Towards the end it took you longer: about "
              + percent(input.drop().value())
              + " %, give or take "
              + percent(input.drop().error())
              + ".");
    }
    if (input.held() > 0) {
      sentences.add("Held so long that the key came again: " + times(input.held()) + ".");
    }
    if (input.bounced() > 0) {
      sentences.add("Came twice at one press: " + times(input.bounced()) + ".");
    }
    if (input.along() > 0) {
      sentences.add("Another key came along: " + times(input.along()) + ".");
    }
    return String.join(" ", sentences);
  }

  private static String misses(Findings.OfInput input) {
    if (input.misses() == 0) {
      return "It came each time, " + times(input.prompts()) + ".";
    }
    String beside =
        input.beside() == 0
            ? ""
            : input.beside() == input.misses()
                ? ", each time with a press right beside it"
                : ", with a press right beside it " + times(input.beside());
    return "Not reached or only late: "
        + input.misses()
        + " of "
        + input.prompts()
        + " prompts"
        + beside
        + ".";
  }

  private static String difference(About difference) {
    if (!sure(difference)) {
      return "In time it is about like your other inputs.";
    }
    long millis = Math.round(Math.abs(difference.value()) / TENS) * TENS;
    long error = Math.max(TENS, Math.round(difference.error() / TENS) * TENS);
    return "It takes you about "
        + millis
        + " thousandths of a second "
        + (difference.value() > 0 ? "longer" : "less")
        + " than your other inputs, give or take "
        + error
        + ".";
  }

  /** Beyond twice its error. */
  private static boolean sure(About about) {
    return Math.abs(about.value()) > 2 * about.error();
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%d", Math.round(HUNDRED * share));
  }

  private static String times(int count) {
    return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
  }
}
