package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Effectors;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;

/** The approaches of a bank in words, with what goes together and what the classes of cost are. */
final class ApproachPaperWords {
  private final Bank bank;

  ApproachPaperWords(Bank bank) {
    this.bank = bank;
  }

  List<PaperPart> parts() {
    PaperPart approaches =
        new PaperPart(
            "approaches",
            "Approaches",
            "Where two have equal points, the one that stands first here comes first.");
    bank.approaches().forEach(a -> approaches.add("Approach " + a.id(), lines(a)));
    PaperPart costs = new PaperPart("costs", "Classes of cost", "");
    bank.costClasses().forEach(c -> costs.add("Class " + c.code(), Phrases.sentence(c.text())));
    PaperPart mixes = new PaperPart("mixes", "What often works together", "");
    bank.mixes().forEach(m -> mixes.add(String.join(" + ", m.approaches()), m.text()));
    return List.of(approaches, costs, mixes);
  }

  private static List<String> lines(Approach approach) {
    Approach.Words words = approach.words();
    List<String> lines = new ArrayList<>();
    lines.add(
        Phrases.sentence(words.name())
            + " In short: "
            + Phrases.sentence(words.brief())
            + " "
            + words.summary());
    lines.add("It offers: " + words.offers());
    lines.add("Worked with: " + words.effectors());
    lines.add("Reach: " + words.reach());
    lines.add(
        "Steadiness: "
            + words.steadiness()
            + (approach.steadinessMillimetres().isPresent()
                ? " It bears a sway of "
                    + Wording.number(approach.steadinessMillimetres().getAsDouble())
                    + " mm."
                : ""));
    lines.add("Force: " + span(approach.forceNewtons(), "N"));
    lines.add("Travel: " + span(approach.travelMillimetres(), "mm"));
    lines.add("Delay: " + span(approach.latencyMilliseconds(), "ms"));
    lines.add("Setting up: " + span(approach.setupMinutes(), "minutes"));
    lines.add("Good at: " + words.goodAt());
    lines.add("Not good at: " + words.badAt());
    lines.add("Load on the body: " + words.strain());
    lines.add("Reasons against it: " + words.contraIndications());
    lines.add("Mounting: " + words.mounting());
    lines.add("Borrow: " + words.borrow());
    lines.add("First try: " + words.firstTry());
    lines.add(rest(approach));
    approach.inputs().forEach(i -> lines.add(input(i)));
    lines.add("Basis: " + basis(approach.basis()));
    return lines;
  }

  private static String rest(Approach approach) {
    String side =
        switch (approach.sides()) {
          case "L" -> "for the left side";
          case "R" -> "for the right side";
          case "both" -> "for either side";
          default -> "of no side";
        };
    return "Cost class "
        + String.join(" or ", approach.costClasses())
        + "; family "
        + approach.family()
        + "; "
        + side
        + (approach.needsMount() ? "; something must be fixed in place" : "; nothing to fix")
        + (approach.clinicianFirst()
            ? "; tried with a clinician's yes and help only."
            : "; may be tried without a clinician.");
  }

  private static String input(Approach.Input input) {
    List<String> by = input.effectors().stream().map(ApproachPaperWords::part).toList();
    return "Input "
        + input.id()
        + ", "
        + input.name()
        + ": a "
        + input.kind()
        + (by.isEmpty() ? "" : ", worked by " + Phrases.and(by))
        + (input.does().isEmpty() ? "" : "; can carry " + Phrases.and(input.does()))
        + "; effort times "
        + Wording.number(input.effort())
        + (input.usage().isEmpty() ? "" : "; code for devices " + input.usage())
        + ".";
  }

  private static String part(String effector) {
    return Effectors.all().contains(effector) ? "the " + Effectors.words(effector) : effector;
  }

  private static String span(Approach.Span span, String unit) {
    return Phrases.joined(
        span.text(),
        "("
            + Wording.number(span.minimum())
            + " to "
            + Wording.number(span.maximum())
            + " "
            + unit
            + ")");
  }

  /** What something rests on, as a list. */
  static String basis(List<String> basis) {
    return basis.isEmpty() ? "none given." : String.join(", ", basis) + ".";
  }
}
