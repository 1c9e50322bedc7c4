package closehand.report;

import closehand.bank.Where;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.rules.proof.Advisory;
import closehand.rules.proof.Advisory.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a deep check found, for the author of a bank: kind by kind, each finding with its place. */
public final class AdvisoryText {
  private static final int MOST_NAMES = 6;

  private final Glyphs glyphs;
  private final StringBuilder text = new StringBuilder();

  private AdvisoryText(Glyphs glyphs) {
    this.glyphs = glyphs;
  }

  /**
   * The findings by kind, what was found for several sides, digits or fields of one template once;
   * what was looked for and not found; and a last line that counts them.
   */
  public static String of(List<Advisory> advisories, Glyphs glyphs) {
    return new AdvisoryText(glyphs).all(advisories);
  }

  private String all(List<Advisory> advisories) {
    Map<Kind, Map<String, List<Advisory>>> kinds = new TreeMap<>();
    for (Advisory one : advisories) {
      kinds
          .computeIfAbsent(one.kind(), k -> new LinkedHashMap<>())
          .computeIfAbsent(likeness(one), k -> new ArrayList<>())
          .add(one);
    }
    int count = 0;
    for (Map.Entry<Kind, Map<String, List<Advisory>>> kind : kinds.entrySet()) {
      say(
          "",
          Phrases.upper(AdvisoryWords.title(kind.getKey())) + " [" + kind.getKey().code() + "]");
      kind.getValue().values().forEach(this::finding);
      count += kind.getValue().size();
      text.append('\n');
    }
    List<String> without = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      if (!kinds.containsKey(kind)) {
        without.add(AdvisoryWords.title(kind));
      }
    }
    if (!without.isEmpty()) {
      say("", "Looked for and not found: " + String.join("; ", without) + ".");
      text.append('\n');
    }
    say(
        "",
        Phrases.count(count, "finding")
            + " to look at; none of them stops the bank from being used.");
    return text.toString();
  }

  /** What is told as one finding. */
  private static String likeness(Advisory one) {
    String rest = "" + one.proof() + one.details();
    return switch (one.kind()) {
      case ANSWERS_ALIKE -> question(one.where()) + rest;
      case UNUSED_QUESTION, NOBODY_FEEDS, UNUSED_TERM, NO_DOUBT, UNREACHABLE ->
          one.subjects() + rest;
      default ->
          one.where() + rest + one.subjects().stream().map(AdvisoryText::withoutInstance).toList();
    };
  }

  /**
   * File, line and column, which is short and which editors open; without a line the whole place.
   */
  private static String place(Where where) {
    return where.line() == 0
        ? where.toString()
        : where.file() + ":" + where.line() + ":" + where.column();
  }

  /** The place of the question that a field belongs to. */
  private static String question(Where where) {
    int last = where.pointer().lastIndexOf("/item/");
    return where.file() + (last <= 0 ? where.pointer() : where.pointer().substring(0, last));
  }

  private static String withoutInstance(String rule) {
    int dot = rule.indexOf('.');
    return dot < 0 ? rule : rule.substring(0, dot);
  }

  private void finding(List<Advisory> same) {
    Advisory first = same.get(0);
    say("- ", notProven(first) + AdvisoryWords.sentence(first, subjects(same)) + proven(first));
    if (same.size() > 1 && first.kind() != Kind.ANSWERS_ALIKE) {
      List<String> others =
          same.stream().skip(1).map(a -> String.join(" with ", a.subjects())).toList();
      say("  ", "The same for " + AdvisoryWords.few(others, MOST_NAMES) + ".");
    }
    first.witness().ifPresent(w -> say("  ", "Answers that show it: " + answers(w)));
    say("  ", "Look at " + place(first.where()) + ".");
  }

  /** The names a sentence is about; of answers alike the facts of one question together. */
  private static List<String> subjects(List<Advisory> same) {
    return same.get(0).kind() == Kind.ANSWERS_ALIKE
        ? same.stream().map(a -> a.subjects().get(0)).toList()
        : same.get(0).subjects();
  }

  private void say(String first, String sentence) {
    String hang = " ".repeat(first.length());
    for (String line : Wrap.lines(first, hang, Clean.of(sentence, glyphs))) {
      text.append(line).append('\n');
    }
  }

  private static String notProven(Advisory one) {
    return one.proof() == Advisory.Proof.NOT_PROVEN
        ? "Not proven; the search was given up after " + one.steps() + " steps. Perhaps: "
        : "";
  }

  private static String proven(Advisory one) {
    return one.proof() == Advisory.Proof.EXHAUSTED ? " Every possibility was gone through." : "";
  }

  /** Answers as bank files name them. */
  private static String answers(Answers answers) {
    List<String> parts = new ArrayList<>();
    answers.byFact().forEach((fact, r) -> parts.add(fact + "=" + value(r.answer())));
    answers.lowered().forEach(l -> parts.add("lowered " + l.code()));
    return parts.isEmpty() ? "any." : String.join("; ", parts) + ".";
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
