package closehand.cli;

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
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Writes the page that goes home. */
final class SummaryCommand {
  private static final String SETUP = "setup";

  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;

  SummaryCommand(Surroundings surroundings, BankOption bank, AnswersOption source) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
  }

  int run(String reader, Optional<Path> out, Optional<String> date) throws IOException {
    if (!List.of("player", "clinician", SETUP).contains(reader)) {
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
    return out.isPresent() ? write(page, out.get()) : print(page);
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

  /** Writes a new file; a page that is there already is never written over. */
  private int write(String page, Path file) {
    try {
      Files.write(
          file, page.getBytes(StandardCharsets.UTF_8), java.nio.file.StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      surroundings
          .error()
          .println(
              "\"" + Words.clean(file.toString()) + "\" is there already. Choose another name.");
      return ExitCode.CANNOT_CREATE;
    } catch (IOException e) {
      removeRest(file);
      surroundings
          .error()
          .println("\"" + Words.clean(file.toString()) + "\" could not be written.");
      return ExitCode.CANNOT_CREATE;
    }
    surroundings.error().println("The page is in this file:");
    surroundings.error().println(Words.clean(file.toString()));
    return ExitCode.DONE;
  }

  /** An empty or half page would stand in the way of the next try. */
  private static void removeRest(Path file) {
    try {
      if (Files.isRegularFile(file)) {
        Files.delete(file);
      }
    } catch (IOException e) {
      // Nothing is lost: the page can still be written under another name.
    }
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
