package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.Question;
import closehand.rules.next.Proposal;
import closehand.rules.next.Proposal.Because;
import closehand.rules.next.Proposal.Stand;
import java.util.ArrayList;
import java.util.List;

/** Why a question is proposed, or that enough is known, in a sentence or two. */
public final class NextText {
  private static final int MOST_NAMES = 3;

  private NextText() {}

  /** The proposal in words. */
  public static NextStep of(Proposal proposal, Bank bank, Glyphs glyphs) {
    String text = proposal.question().map(q -> because(q, proposal.because(), bank)).orElse("");
    if (proposal.because() instanceof Because.Enough enough) {
      text = enough(enough.stand(), enough.questionsLeft());
    }
    return new NextStep(
        proposal.question().map(Question::id), Wrap.lines("", "", Clean.of(text, glyphs)));
  }

  private static String because(Question question, Because because, Bank bank) {
    if (because instanceof Because.Opening) {
      return "Next: how we meet and what may be written down.";
    }
    if (because instanceof Because.OpenStop open) {
      return "Next: a warning sign, since it has to be clear before anything is tried ("
          + titles(open.cautions(), bank)
          + ").";
    }
    if (because instanceof Because.OpenCare open) {
      return "Next: a matter of care, since it decides what to look out for ("
          + titles(open.cautions(), bank)
          + ").";
    }
    if (because instanceof Because.Telling telling) {
      String about = "Next: " + Phrases.lower(Phrases.bare(Labels.of(question))) + ", since it ";
      List<String> reasons = new ArrayList<>();
      if (!telling.couldBringIn().isEmpty()) {
        reasons.add("could bring in " + names(telling.couldBringIn(), bank));
      }
      if (!telling.couldMove().isEmpty()) {
        reasons.add("could change how " + names(telling.couldMove(), bank) + " stands");
      }
      return about
          + (reasons.isEmpty()
              ? "decides which other questions matter"
              : String.join(" and ", reasons))
          + ".";
    }
    return "";
  }

  private static String titles(List<String> codes, Bank bank) {
    List<String> titles = new ArrayList<>();
    for (String code : codes) {
      titles.add(Phrases.lower(Phrases.bare(bank.caution(code).map(Caution::title).orElse(code))));
    }
    return few(titles, "caution");
  }

  private static String names(List<String> approaches, Bank bank) {
    List<String> names = new ArrayList<>();
    for (String id : approaches) {
      names.add(
          Phrases.lower(
              bank.approach(id).map(Approach::words).map(Approach.Words::brief).orElse(id)));
    }
    return few(names, "approach");
  }

  private static String few(List<String> names, String what) {
    int more = names.size() - MOST_NAMES;
    if (more <= 0) {
      return Phrases.and(names);
    }
    String plural = what.endsWith("h") ? what + "es" : what + "s";
    return String.join(", ", names.subList(0, MOST_NAMES))
        + " and "
        + more
        + " more "
        + (more == 1 ? what : plural);
  }

  /**
   * That no more answers are needed for the suggestion's sake, and what the rest is good for.
   *
   * @param stand how the suggestion stands
   * @param left how many questions of the short interview are open
   */
  static String enough(Stand stand, int left) {
    String rest = left == 1 ? "The question left" : "The " + left + " questions left";
    String goOn = left == 0 ? "" : " go on for the plan's details?";
    return switch (stand) {
      case LEADS_FIRMLY, LEADS ->
          left == 0
              ? "Nothing more needs to be asked for the suggestion."
              : rest
                  + (stand == Stand.LEADS_FIRMLY ? " cannot" : " could hardly")
                  + " change the suggestion;"
                  + goOn;
      case NOTHING_CAN_LEAD, NOTHING_LEADS ->
          "No control is suggested by these answers"
              + (left == 0
                  ? "."
                  : ", and "
                      + Phrases.lower(rest)
                      + (stand == Stand.NOTHING_CAN_LEAD ? " cannot" : " could hardly")
                      + " change that;"
                      + goOn);
      case WITHHELD ->
          "Suggestions wait for a health check, and no further answer is needed to see that."
              + (left == 0 ? "" : " " + rest + " can still be answered for later; go on?");
    };
  }
}
