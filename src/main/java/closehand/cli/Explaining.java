package closehand.cli;

import closehand.bank.CautionClass;
import closehand.bank.Hint;
import closehand.interview.Answers;
import closehand.json.WhyWriter;
import closehand.report.Clean;
import closehand.report.Glyphs;
import closehand.report.StandingWords;
import closehand.report.StopNotice;
import closehand.report.WhyText;
import closehand.report.Wrap;
import closehand.rules.Advice;
import closehand.rules.Standing;
import closehand.rules.Warning;
import closehand.rules.why.Explanation;
import closehand.rules.why.Settled;
import closehand.rules.why.Subject;
import closehand.rules.why.Turns;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Explains how something stands, for the commands and for the line face. */
final class Explaining {
  private final Pages pages;
  private final Glyphs glyphs;

  Explaining(Pages pages, Glyphs glyphs) {
    this.pages = pages;
    this.glyphs = glyphs;
  }

  /** Every control by its id, in words with how it stands, in the order of the advice. */
  Map<String, String> names(Answers answers) {
    Advice advice = pages.advise(answers);
    Map<String, String> names = new LinkedHashMap<>();
    for (Standing standing : advice.standings()) {
      String state = advice.withheld() ? "" : ": " + StandingWords.of(standing.status());
      names.put(
          standing.approach().id(), Clean.of(standing.approach().words().brief() + state, glyphs));
    }
    return names;
  }

  /**
   * The explanation as lines; where a stop ends the session its notice alone, and a sentence where
   * nothing has this name.
   */
  String text(Answers answers, String name, boolean unfolded) {
    List<Warning> ending = ending(pages.advise(answers));
    if (!ending.isEmpty()) {
      return StopNotice.of(ending, glyphs);
    }
    Optional<Subject> subject = Subject.of(pages.bank(), name);
    if (subject.isEmpty()) {
      return String.join("\n", Wrap.lines("", "", Clean.of(unknown(name), glyphs))) + "\n";
    }
    Explanation why = Explanation.of(pages.rules(), answers, subject.get());
    boolean control = subject.get() instanceof Subject.OfApproach;
    return WhyText.of(
        why,
        pages.bank(),
        answers,
        control ? Optional.of(Turns.of(pages.rules(), answers)) : Optional.empty(),
        control ? Settled.of(pages.rules(), answers) : Optional.empty(),
        unfolded,
        glyphs);
  }

  private static List<Warning> ending(Advice advice) {
    return advice.stops().stream().filter(s -> s.cautionClass() == CautionClass.STOP_ALL).toList();
  }

  /** Says that no control comes first, and why; the notice of a stop that ends the session. */
  String nothingLeads(Answers answers) {
    Advice advice = pages.advise(answers);
    List<Warning> ending = ending(advice);
    return ending.isEmpty()
        ? String.join("\n", Wrap.lines("", "", Clean.of(nothingLeads(advice), glyphs))) + "\n"
        : StopNotice.of(ending, glyphs);
  }

  private static String nothingLeads(Advice advice) {
    String why =
        advice.withheld()
            ? "No control comes first: suggestions wait for a health check."
            : "No control comes first yet"
                + (advice.with(Standing.Status.UNDECIDED).isEmpty()
                    ? ": by these answers none is suggested."
                    : ": none is suggested so far, and open questions could bring some in.");
    return why
        + " Name a control, an input, a body part or a caution, and its rules are explained as they"
        + " stand.";
  }

  /** The same as JSON. */
  String nothingLeadsJson(Answers answers) {
    return WhyWriter.nothingLeads(pages.advise(answers));
  }

  /** An explanation as JSON. */
  String json(Answers answers, Subject subject) {
    Explanation why = Explanation.of(pages.rules(), answers, subject);
    return subject instanceof Subject.OfApproach
        ? WhyWriter.write(
            why,
            answers,
            Optional.of(Turns.of(pages.rules(), answers)),
            Settled.of(pages.rules(), answers))
        : WhyWriter.write(why, answers, Optional.empty(), Optional.empty());
  }

  /** The control that leads, settings apart. */
  Optional<String> leading(Answers answers) {
    return pages.rules().verdict(answers).leader();
  }

  /** Says that nothing has this name, and what has nearly the same. */
  String unknown(String name) {
    String hint = Hint.didYouMean(name, Subject.names(pages.bank()));
    return "There is no control, input, body part or caution called \""
        + name
        + "\"."
        + (hint.isEmpty() ? "" : " " + hint);
  }
}
