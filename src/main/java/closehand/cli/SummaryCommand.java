package closehand.cli;

import closehand.interview.Sharing;
import closehand.plan.PlanAsk;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.report.ClinicianPage;
import closehand.report.Glyphs;
import closehand.report.PageInput;
import closehand.report.PlayerPage;
import closehand.report.SetupSheet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Writes the page that goes home. */
final class SummaryCommand {
  private static final String SETUP = "setup";
  private static final String CLINICIAN = "clinician";

  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;

  SummaryCommand(Surroundings surroundings, BankOption bank, AnswersOption source) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
  }

  int run(String reader, Optional<Path> out, Optional<String> date) throws IOException {
    if (!List.of("player", CLINICIAN, SETUP).contains(reader)) {
      return usage("--for is player, clinician or setup.");
    }
    if (date.isPresent() && !isDate(date.get())) {
      return usage("--date is a date such as 2026-11-25.");
    }
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    if (reader.equals(CLINICIAN) && !mayLeave(found.get())) {
      return NotAgreed.say(Sharing.CLINICIAN, found.get().name(), surroundings);
    }
    PageInput told = loading.pages().input(found.get(), date.orElseGet(surroundings::today));
    Optional<Planning> planning = Pages.planning(told, found.get());
    PageInput input =
        reader.equals(SETUP) ? told : Pages.loaded(Pages.ranked(told, planning), planning);
    Glyphs glyphs = bank.glyphs(surroundings);
    String page =
        switch (reader) {
          case "player" -> PlayerPage.of(input, glyphs);
          case SETUP -> SetupSheet.of(input, plans(input, found.get()), glyphs);
          default -> ClinicianPage.of(input, glyphs);
        };
    return out.isPresent()
        ? NewFile.write(out.get(), page.getBytes(StandardCharsets.UTF_8), surroundings)
        : print(page);
  }

  /**
   * Whether the page for a clinician may leave: a case has its consent, a file of answers is its
   * owner's own.
   */
  private static boolean mayLeave(Case one) {
    return one.document().isEmpty() || Sharing.CLINICIAN.agreed(one.answers());
  }

  /** The plans of all games; none while suggestions are withheld. */
  private static List<Planned> plans(PageInput input, Case one) {
    return Pages.planning(input, one)
        .map(p -> p.session(PlanAsk.USUAL, () -> PlanWork.PLAN))
        .map(m -> List.copyOf(m.values()))
        .orElse(List.of());
  }

  private int print(String page) {
    surroundings.output().print(page);
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  private int usage(String what) {
    surroundings.error().println(what);
    return ExitCode.USAGE;
  }

  private static boolean isDate(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeException e) {
      return false;
    }
  }
}
