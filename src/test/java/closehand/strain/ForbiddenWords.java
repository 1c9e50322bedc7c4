package closehand.strain;

import java.util.List;
import java.util.regex.Pattern;

/** What may never be said beside a load: promises, verdicts, chances. */
public final class ForbiddenWords {
  private static final List<Pattern> FORBIDDEN =
      List.of(
              "\\bsafe\\b",
              "\\bsafely\\b",
              "\\bunsafe\\b",
              "harmless",
              "no danger",
              "guarantee",
              "\\bprevent",
              "\\bprotects? you from",
              "\\b(will|can|does)( not|n't|not) (cause|hurt|harm|injure|lead to)",
              "\\bwon't\\b",
              "will (cause|hurt|harm|injure)",
              "diagnos",
              "\\bcures?\\b",
              "\\bcured\\b",
              "prescri",
              "treat(s|ed|ment|ing)?\\b",
              "\\brisk",
              "probab",
              "\\bchances? (of|that)",
              "\\blikely to (hurt|harm|cause|injure)",
              "\\d ?(%|percent)[^.]*(risk|chance|injur|complain)",
              "\\bscore",
              "\\babnormal",
              "\\bnormal",
              "\\bhealthy\\b",
              "\\bsuffer",
              "\\bdeficit",
              "\\bfail(ed|ure|s)?\\b",
              "too weak",
              "\\bbad (arm|hand|leg)",
              "push through",
              "try harder",
              "no pain",
              "build[- ]up",
              "add \\d+ minutes",
              "\\d+ minutes more",
              "than other (people|players)")
          .stream()
          .map(p -> Pattern.compile(p, Pattern.CASE_INSENSITIVE))
          .toList();

  /** What a text holds of it, as patterns; nothing for a text that may be printed. */
  public static List<String> in(String text) {
    return FORBIDDEN.stream().filter(p -> p.matcher(text).find()).map(Pattern::pattern).toList();
  }

  private ForbiddenWords() {}
}
