package closehand.report;

import closehand.bank.Effectors;
import java.util.ArrayList;
import java.util.List;

/** Fingers and thumbs that have to rest by what the player answered. */
final class RestingDigits {
  /** Pain from this many points of 10 on means rest (practice estimate). */
  private static final double PAIN_THAT_RESTS = 6;

  private static final List<String> SIDES = List.of("L", "R");
  private static final List<String> DIGITS = List.of("T", "I", "M", "R", "L");

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
