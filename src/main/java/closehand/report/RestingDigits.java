package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Effectors;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Fingers and thumbs that have to rest by what the player answered. */
final class RestingDigits {
  /** Pain from this many points of 10 on means rest (practice estimate). */
  private static final double PAIN_THAT_RESTS = 6;

  private static final List<String> SIDES = List.of("L", "R");
  private static final List<String> DIGITS = List.of("T", "I", "M", "R", "L");

  /** Kinds of input that somebody would miss at once. */
  private static final Set<String> STEERS = Set.of("axis1", "axis2", "pointer");

  private RestingDigits() {}

  /** Their names, such as "right thumb", left side first. */
  static List<String> of(PageInput input) {
    Facts facts = input.facts();
    List<String> resting = new ArrayList<>();
    for (String side : SIDES) {
      for (String digit : DIGITS) {
        String start = "digit." + side;
        boolean hurts = facts.number(start + ".pain." + digit).orElse(0) >= PAIN_THAT_RESTS;
        if (hurts || facts.is(start + ".state." + digit, "rest")) {
          resting.add(Effectors.words(side + "." + digit));
        }
      }
    }
    return resting;
  }

  /** What of an idea stays unused, since only a resting finger could work it; empty for nothing. */
  static String unused(PageInput input, Approach approach) {
    List<String> resting = of(input);
    List<String> unused = new ArrayList<>();
    for (Approach.Input one : approach.inputs()) {
      if (STEERS.contains(one.kind())
          && !one.effectors().isEmpty()
          && one.effectors().stream().allMatch(e -> resting.contains(Effectors.words(e)))) {
        unused.add(one.name());
      }
    }
    return unused.isEmpty() ? "" : "Leave the " + Phrases.and(unused) + " unused for now.";
  }

  /** "Your right thumb rests today: give it no button and no stick."; empty where none has to. */
  static String sentence(PageInput input) {
    List<String> names = of(input);
    if (names.isEmpty()) {
      return "";
    }
    boolean one = names.size() == 1;
    return "Your "
        + Phrases.and(names)
        + (one ? " rests today: give it" : " rest today: give them")
        + " no button and no stick.";
  }
}
