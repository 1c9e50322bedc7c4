package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.plan.PlanAsk;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.plan.solve.Budget;
import closehand.report.ClinicianPage;
import closehand.report.Glyphs;
import closehand.report.LoadText;
import closehand.report.PageInput;
import closehand.report.PlanText;
import closehand.report.PlayerPage;
import closehand.report.SetupSheet;
import closehand.strain.ForbiddenWords;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed for the gold players promises nothing, judges nobody and names no chances. */
class PrintedWordsTest {
  /** Said for the opposite, or of something else than the load of a plan. */
  private static final List<String> ALLOWED =
      List.of("gives no score of a person", "a risk of choking or much saliva");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"GC1", "GC2", "GC3", "GC4", "GC5", "GC6", "GC7", "GC8"})
  void plansSheetsAndPagesAreAllowed(String id) throws IOException {
    Bank bank = BankSource.await(BankSource.ahead(Optional.empty())).bank().orElseThrow();
    texts(bank, id)
        .forEach(
            (name, text) -> {
              assertFalse(text.isBlank(), name);
              assertEquals(List.of(), ForbiddenWords.in(text), name + " of " + id + ": " + text);
            });
  }

  /** Of plans that cost the same the one with lighter hands is the one that is printed. */
  @Test
  void tiesGoToLighterHands() throws IOException {
    Bank bank = BankSource.await(BankSource.ahead(Optional.empty())).bank().orElseThrow();
    Case one = gold(bank, "GC4");
    PageInput input = new Pages(bank).input(one, "2026-11-25");
    PlanAsk switches = PlanAsk.USUAL.only(List.of("SW_FINGER"));
    Planning wired = Pages.planning(input, one).orElseThrow();
    Planning bare =
        Planning.of(bank, input.answers(), input.together(), input.byGame(), Map.of())
            .orElseThrow();
    int lighter = 0;
    for (int slot : bare.slots()) {
      Planned before = bare.plan(slot, switches, Budget.ORDINARY.withNodes(20));
      Planned after = wired.plan(slot, switches, Budget.ORDINARY.withNodes(20));
      assertEquals(before.plan().cost(), after.plan().cost());
      lighter += LoadText.heavierHand(input, after) < LoadText.heavierHand(input, before) ? 1 : 0;
    }
    assertTrue(lighter > 0, "some ties are broken");
  }

  private Case gold(Bank bank, String id) throws IOException {
    Path file = folder.resolve(id + ".json");
    Files.writeString(file, SetUpSheetStoryTest.facts(id));
    AnswersSource.Loaded loaded =
        AnswersSource.match(
            bank, AnswersSource.read(file.toString(), InputStream.nullInputStream()));
    return new Case(
        loaded.answers().orElseThrow(),
        "",
        Optional.empty(),
        Optional.empty(),
        loaded.profiles(),
        loaded.limits());
  }

  private Map<String, String> texts(Bank bank, String id) throws IOException {
    Case one = gold(bank, id);
    PageInput told = new Pages(bank).input(one, "2026-11-25");
    Planning planning = Pages.planning(told, one).orElseThrow();
    List<Planned> plans =
        List.copyOf(planning.session(PlanAsk.USUAL, () -> PlanWork.PLAN).values());
    assertFalse(plans.isEmpty());
    PageInput input = told.with(LoadText.day(told, plans));
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("plan", PlanText.of(input, plans, Glyphs.ASCII));
    texts.put("load", LoadText.details(input, plans, Glyphs.ASCII));
    texts.put("sheet", SetupSheet.of(input, plans, Glyphs.ASCII));
    texts.put("player", PlayerPage.of(input, Glyphs.ASCII));
    String clinician = ClinicianPage.of(input, Glyphs.ASCII);
    assertTrue(clinician.contains("LOAD OF THE PLAN: "), id);
    texts.put("clinician", clinician.substring(0, clinician.indexOf("\nWHAT THIS RESTS ON")));
    texts.replaceAll((name, text) -> withoutNames(bank, text));
    return texts;
  }

  /**
   * A game may call an action what it likes, such as "Score list"; titles of sources are theirs.
   */
  private static String withoutNames(Bank bank, String text) {
    String flat = text.replaceAll("\\s+", " ");
    for (String allowed : ALLOWED) {
      flat = flat.replace(allowed, "");
    }
    for (var game : bank.games()) {
      for (var action : game.actions()) {
        flat = flat.replaceAll("(?i)\\b" + Pattern.quote(action.name()) + "\\b", "ACTION");
      }
    }
    return flat;
  }
}
