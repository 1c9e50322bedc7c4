package closehand.cli;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.line.Desk;
import closehand.report.Consultation;
import closehand.report.Glyphs;
import closehand.report.PlayerPage;
import closehand.report.QuietLine;
import closehand.report.StopNotice;
import closehand.report.SuggestionText;
import closehand.rules.Advice;
import closehand.rules.Holds;
import closehand.rules.Warning;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** What the line face sees of the program: advice in words, saving, the page. */
final class CaseDesk implements Desk {
  private final Pages pages;
  private final Kept kept;
  private final Glyphs glyphs;
  private final String today;

  CaseDesk(Pages pages, Kept kept, Glyphs glyphs, String today) {
    this.pages = pages;
    this.kept = kept;
    this.glyphs = glyphs;
    this.today = today;
  }

  @Override
  public Consultation consult(Interview interview) {
    Advice advice = pages.advise(interview.answers());
    List<Consultation.Notice> notices = new ArrayList<>();
    List<Consultation.Lowerable> lowerable = new ArrayList<>();
    for (Warning stop : advice.stops()) {
      Caution caution = stop.caution();
      boolean ends = stop.cautionClass() == CautionClass.STOP_ALL;
      notices.add(
          new Consultation.Notice(
              caution.code(), caution.title(), ends, lines(StopNotice.of(stop, glyphs))));
    }
    for (List<Warning> some : List.of(advice.stops(), advice.cautions())) {
      some.stream()
          .map(Warning::caution)
          .filter(Caution::lowerable)
          .forEach(c -> lowerable.add(new Consultation.Lowerable(c.code(), c.title())));
    }
    return new Consultation(
        lines(QuietLine.of(advice, openQuestions(interview), glyphs)),
        Holds.of(advice, interview.asker() == Provenance.By.CLINICIAN),
        notices,
        lowerable,
        () -> lines(SuggestionText.of(pages.input(interview, kept.name(), today), glyphs)));
  }

  private static int openQuestions(Interview interview) {
    return Math.max(0, interview.progress().total() - interview.answeredCount());
  }

  @Override
  public List<String> keep(Interview interview) {
    try {
      kept.save(interview);
      return List.of();
    } catch (IOException e) {
      return List.of(
          "The last answers could not be saved. The interview goes on and saving is tried again after each answer."
              + " Is the disk full, or the folder gone?");
    }
  }

  @Override
  public List<String> page(Interview interview) {
    return lines(PlayerPage.of(pages.input(interview, kept.name(), today), glyphs));
  }

  @Override
  public String today() {
    return today;
  }

  @Override
  public List<String> delete() {
    try {
      kept.delete();
      return List.of(
          "Everything kept of this case is deleted. A copy may remain on the disk until it is written over.");
    } catch (IOException e) {
      return List.of("The case could not be deleted: its file cannot be reached.");
    }
  }

  private static List<String> lines(String text) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    return lines;
  }
}
