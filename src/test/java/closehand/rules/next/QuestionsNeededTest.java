package closehand.rules.next;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Question;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.StillOpen;
import closehand.rules.GoldAnswers;
import closehand.rules.RuleBook;
import closehand.rules.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * How many questions each order needs, kept in {@code docs/questions-needed.md}, which {@code
 * -Dgolden.update=true} writes anew.
 */
class QuestionsNeededTest {
  private static final Path PAPER = Path.of("docs/questions-needed.md");
  private static final RuleBook BOOK = RuleBook.of(GoldAnswers.bank());

  /** One interview: what led after each question. */
  private record Run(List<Verdict> after) {
    /** From which question on the lead is the final one of the whole case. */
    int leads(Verdict whole) {
      int from = after.size();
      while (from > 0 && after.get(from - 1).leader().equals(whole.leader())) {
        from--;
      }
      return from == after.size() ? 0 : from + 1;
    }

    /** With which question it was firm for good. */
    int firm() {
      int from = after.size();
      while (from > 0 && after.get(from - 1).firm()) {
        from--;
      }
      return from == after.size() ? 0 : from + 1;
    }
  }

  private static Interview interview(Answers answers, Interview.Route route) {
    return Interview.reopen(
        BOOK.bank().questionnaire(), answers, route, Provenance.By.CLINICIAN, Optional.empty());
  }

  private static Optional<Question> inOrder(Interview interview) {
    return interview.open().stream()
        .filter(o -> o.why() == StillOpen.Why.NOT_YET_ASKED)
        .map(StillOpen::question)
        .findFirst();
  }

  private static Run run(
      Answers player, Interview.Route route, Function<Interview, Optional<Question>> next) {
    List<Verdict> after = new ArrayList<>();
    Answers answers = Answers.NONE;
    Optional<Question> question = next.apply(interview(answers, route));
    while (question.isPresent()) {
      answers = give(answers, player, question.get(), route);
      after.add(BOOK.verdict(answers));
      question = next.apply(interview(answers, route));
    }
    return new Run(after);
  }

  private static Answers give(
      Answers answers, Answers player, Question question, Interview.Route route) {
    Answers now = answers;
    while (true) {
      Optional<String> fact =
          interview(now, route).open().stream()
              .filter(o -> o.question().id().equals(question.id()))
              .filter(o -> o.why() == StillOpen.Why.NOT_YET_ASKED)
              .map(o -> o.field().fact())
              .findFirst();
      if (fact.isEmpty()) {
        return now;
      }
      now =
          now.with(
              fact.get(),
              Optional.ofNullable(player.byFact().get(fact.get()))
                  .orElse(
                      new Answers.Recorded(
                          new Answer.Absent(Answer.Reason.UNKNOWN), Provenance.PLAYER_TOLD)));
    }
  }

  private static String number(int question) {
    return question == 0 ? "not reached" : Integer.toString(question);
  }

  @Test
  void thePaperSaysWhatTheProgramDoes() throws IOException {
    StringBuilder table = new StringBuilder();
    int sooner = 0;
    for (Map.Entry<String, Answers> player : GoldAnswers.of(BOOK.bank()).entrySet()) {
      Verdict whole = BOOK.verdict(player.getValue());
      Run core = run(player.getValue(), Interview.Route.CORE, QuestionsNeededTest::inOrder);
      Run brief =
          run(player.getValue(), Interview.Route.BRIEF, i -> Asking.next(BOOK, i).question());
      int coreLeads = core.leads(whole);
      int briefLeads = brief.leads(whole);
      sooner += briefLeads > 0 && (coreLeads == 0 || briefLeads < coreLeads) ? 1 : 0;
      table
          .append("| ")
          .append(player.getKey())
          .append(" | ")
          .append(whole.leader().orElse("none"))
          .append(" | ")
          .append(core.after().size())
          .append(" | ")
          .append(number(coreLeads))
          .append(" | ")
          .append(number(core.firm()))
          .append(" | ")
          .append(brief.after().size())
          .append(" | ")
          .append(number(briefLeads))
          .append(" | ")
          .append(number(brief.firm()))
          .append(" |\n");
    }
    String paper = HEAD + table;
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(PAPER, paper);
    }
    assertEquals(Files.readString(PAPER), paper);
    assertTrue(sooner >= 6, "sooner in " + sooner + " of 8");
  }

  private static final String HEAD =
      """
      # How many questions it takes

      The eight invented players of `src/test/resources/gold-cases.json`, each interviewed twice with the answers of their file: in the order of the questionnaire (core
      route) and on the briefest route, which asks consent and warning signs first and then what tells most. A clinician asks, so that tasks are in. What a file does not
      answer is "don't know". "Leads" is the question from which on the control that leads is the one that the whole file leads to; "firm" is the question from which
      on no open answer can change that. The briefest route may take any question of the bank; the core route only its own, so it never learns some things. "Not reached" with
      a lead before it means: enough was known to say what leads, not enough to say that nothing could change it. The players are invented by the same hand as the
      rules; this compares two orders of asking and says nothing about people.

      GC7 is firm on the core route and not on the briefest one, though the same control leads. The briefest route stops where no single open question tells anything more about the lead
      (under 0.01 bit); for GC7 that is before voice is tried. Until then head switches have 3 points and spoken commands "0 to 3": the two open rules give 2 points and 1, for different
      shares of recognised phrases, so that they never apply together. Whether a lead is firm is judged rule by rule, as if both could, and an equal number of points might turn it; so it is not
      called firm, though no answers can turn it. Such over-caution is counted by `FirmnessOnCoreTest`.

      Written by `mvn -q -B test -Dtest=QuestionsNeededTest -Dgolden.update=true`.

      | player | leads in the end | core: asked | core: leads | core: firm | briefest: asked | briefest: leads | briefest: firm |
      |---|---|---|---|---|---|---|---|
      """;
}
