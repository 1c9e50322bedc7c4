package closehand.report;

import closehand.bank.Where;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.rules.proof.Advisory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a deep check found, for the author of a bank: a line a finding, with its place. */
public final class AdvisoryText {
  private AdvisoryText() {}

  /**
   * The findings in order, what was found for several sides or digits of one template once, and a
   * last line that counts them.
   */
  public static String of(List<Advisory> advisories, Glyphs glyphs) {
    Map<String, List<Advisory>> alike = new LinkedHashMap<>();
    for (Advisory one : advisories) {
      String key = one.kind() + place(one.where()) + one.proof() + one.details();
      boolean rule = one.subjects().stream().anyMatch(s -> s.matches("R[0-9].*"));
      alike.computeIfAbsent(rule ? key : key + one.subjects(), k -> new ArrayList<>()).add(one);
    }
    StringBuilder text = new StringBuilder();
    for (List<Advisory> same : alike.values()) {
      text.append(Clean.of(line(same), glyphs)).append('\n');
      same.get(0)
          .witness()
          .ifPresent(
              w -> text.append(Clean.of("    For example: " + answers(w), glyphs)).append('\n'));
    }
    text.append(Phrases.count(alike.size(), "finding"))
        .append(" to look at; none of them stops the bank from being used.\n");
    return text.toString();
  }

  private static String place(Where where) {
    return where.toString();
  }

  private static String line(List<Advisory> same) {
    Advisory first = same.get(0);
    String more =
        same.size() > 1
            ? " The same for "
                + String.join(
                    ", ", same.stream().skip(1).map(a -> String.join("/", a.subjects())).toList())
                + "."
            : "";
    return first.where()
        + " ["
        + first.kind().code()
        + "] "
        + sentence(first)
        + proof(first.proof())
        + more;
  }

  private static String sentence(Advisory one) {
    String first = one.subjects().isEmpty() ? "" : one.subjects().get(0);
    String second = one.subjects().size() > 1 ? one.subjects().get(1) : "";
    String detail = String.join(", ", one.details());
    return switch (one.kind()) {
      case NEVER_FIRES -> first + " never fires, whatever is answered.";
      case ALWAYS_FIRES -> first + " always fires, whatever is answered.";
      case SAYS_THE_SAME ->
          first + " says the same as " + second + ", which fires whenever it does.";
      case CONTRADICTS ->
          "What " + first + " gives " + detail + ", " + second + " takes off whenever it fires.";
      case POINTS_NEVER_COUNT ->
          "The points of " + first + " for " + detail + " never count: it is ruled out then.";
      case ALL_EXCLUDED -> "Every approach but settings can be ruled out at once.";
      case UNUSED_QUESTION -> "No rule, term or condition reads an answer to " + first + ".";
      case ANSWERS_ALIKE -> "Nothing tells these answers to " + first + " apart: " + detail + ".";
      case NOBODY_FEEDS -> "The term " + first + " is " + detail + ", whatever is answered.";
      case UNUSED_TERM -> "Nothing reads the term " + first + ".";
      case BAND_GAP ->
          "Between the bands "
              + String.join(", ", one.subjects())
              + " there are values of "
              + detail
              + " that none of them covers.";
      case BAND_OVERLAP -> "The bands " + first + " and " + second + " can both fire.";
      case NO_DOUBT ->
          "\"Don't know\" at the warning sign "
              + first
              + " has no way of its own through the rules.";
      case UNREACHABLE -> "No answers ever bring up " + first + ".";
    };
  }

  private static String proof(Advisory.Proof proof) {
    return switch (proof) {
      case WITNESS, READ_OFF -> "";
      case EXHAUSTED -> " (Every possibility was gone through.)";
      case NOT_PROVEN -> " (Not proven: the search ran out of its budget.)";
    };
  }

  /** Answers as bank files name them. */
  private static String answers(Answers answers) {
    List<String> parts = new ArrayList<>();
    answers.byFact().forEach((fact, r) -> parts.add(fact + " = " + value(r.answer())));
    answers.lowered().forEach(l -> parts.add("lowered " + l.code()));
    return parts.isEmpty() ? "any answers." : String.join("; ", parts) + ".";
  }

  private static String value(Answer answer) {
    if (answer instanceof Answer.Absent absent) {
      return absent.reason().code();
    }
    Value value = ((Answer.Given) answer).value();
    if (value instanceof Value.Code code) {
      return code.code();
    }
    if (value instanceof Value.Codes codes) {
      return codes.codes().toString();
    }
    if (value instanceof Value.Number number) {
      return Wording.number(number.value());
    }
    return value instanceof Value.Flag flag ? (flag.value() ? "yes" : "no") : "words";
  }
}
