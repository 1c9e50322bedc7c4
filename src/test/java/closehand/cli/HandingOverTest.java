package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Handing a case over, opening the seal, and letting go of it. */
class HandingOverTest {
  /** Consent to the player and whoever helps, but not to a clinician; one warning sign; a note. */
  private static final String TO_TEAM =
      "1\n1\ny\ny\n1\n3\n1\n=hand up\n+ tires quickly\n2 5\nn\n1\n1\n1\n1\n2\n";

  @TempDir private Path folder = Path.of(".");

  private World run(String... arguments) {
    return World.run("", with(arguments));
  }

  private String[] with(String... arguments) {
    return Stream.concat(Stream.of(arguments), Stream.of("--home", home().toString()))
        .toArray(String[]::new);
  }

  private Path home() {
    return folder.resolve("cases");
  }

  private String begun(String script) throws IOException {
    World world = World.run(script, with("interview"));
    assertEquals(ExitCode.UNFINISHED, world.code(), world.output());
    return Cases.at(home()).store().names().get(0);
  }

  @Test
  void thePlayersCopyHoldsEverythingAndTheFlatOneGivesTheSameAdvice() throws IOException {
    String name = begun(TO_TEAM);
    String fhir = run("export", name, "--to", "fhir").output();
    assertTrue(fhir.contains("\"resourceType\" : \"QuestionnaireResponse\""), fhir);
    assertTrue(fhir.contains("Questionnaire/core|"), fhir);
    assertTrue(fhir.contains("safe.photosens") && fhir.contains("tires quickly"), fhir);
    assertFalse(fhir.contains("setAside") || fhir.contains("history"), fhir);

    Path flat = folder.resolve("answers.json");
    World written = run("export", name, "--to", "answers", "--out", flat.toString());
    assertEquals(ExitCode.DONE, written.code(), written.error());
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(flat)));
    assertEquals(
        run("advise", name, "--json").output(),
        World.run("", "advise", "--answers", flat.toString(), "--json").output());
    assertEquals(
        ExitCode.CANNOT_CREATE,
        run("export", name, "--to", "answers", "--out", flat.toString()).code());
  }

  @Test
  void whatConsentLeavesOutIsLeftOut() throws IOException {
    String name = begun(TO_TEAM);
    World clinician = run("export", name, "--to", "fhir", "--share", "clinician");
    assertEquals(ExitCode.BAD_DATA, clinician.code());
    assertEquals("", clinician.output());
    assertTrue(clinician.error().contains("was not agreed"), clinician.error());
    String team = run("export", name, "--to", "fhir", "--share", "team").output();
    assertTrue(team.contains("comm.mode"), team);
    assertFalse(team.contains("safe.") || team.contains("tires quickly"), team);
    assertTrue(team.contains("\"in-progress\""), team);
    assertEquals(
        ExitCode.USAGE, run("export", name, "--to", "fhir", "--share", "everybody").code());
    assertEquals(ExitCode.USAGE, run("export", name, "--to", "paper").code());
  }

  @Test
  void thePageForAClinicianLeavesOnlyWhereThePlayerAgreed() throws IOException {
    String name = begun(TO_TEAM);
    assertTrue(Files.exists(home().resolve(name + "-player.txt")));
    assertFalse(Files.exists(home().resolve(name + "-clinician.txt")), "no page for a clinician");
    Path out = folder.resolve("page.txt");
    for (World refused :
        List.of(
            run("summary", name, "--for", "clinician"),
            run("summary", name, "--for", "clinician", "--out", out.toString()))) {
      assertEquals(ExitCode.BAD_DATA, refused.code());
      assertEquals("", refused.output());
      assertTrue(refused.error().contains("was not agreed"), refused.error());
      assertTrue(refused.error().contains("Only the player can change that"), refused.error());
    }
    assertFalse(Files.exists(out));
    assertEquals(ExitCode.DONE, run("summary", name, "--for", "setup").code());
    World look = World.typed("2\n2\n1\nq\n", with("interview", name, "--line"));
    assertFalse(look.output().contains("the page for the clinician"), look.output());
    assertTrue(look.output().contains("Type 1 or q."), look.output());
    assertFalse(look.output().contains("FOR THE CLINICIAN"), look.output());

    run("forget", name, "--yes");
    String agreed = begun(TO_TEAM.replace("2 5", "2 4"));
    assertTrue(Files.exists(home().resolve(agreed + "-clinician.txt")));
    World page = run("summary", agreed, "--for", "clinician");
    assertEquals(ExitCode.DONE, page.code(), page.error());
    assertTrue(page.output().contains("FOR THE CLINICIAN"), page.output());
  }

  @Test
  void aClinicianWhoAsksSeesOnTheScreenWhatMayNotLeave() throws IOException {
    World.run(TO_TEAM, with("interview", "--asker", "clinician"));
    String name = Cases.at(home()).store().names().get(0);
    World look = World.typed("2\n2\nq\n", with("interview", name, "--line"));
    assertTrue(look.output().contains("FOR THE CLINICIAN"), look.output());
    assertEquals(ExitCode.BAD_DATA, run("summary", name, "--for", "clinician").code());
  }

  @Test
  void aPageInAFileIsItsOwnersAloneAndSaysThatItIsNotSealed() throws IOException {
    String name = begun(TO_TEAM);
    Path out = folder.resolve("page.txt");
    World written = run("summary", name, "--out", out.toString());
    assertEquals(ExitCode.DONE, written.code(), written.error());
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(out)));
    assertTrue(written.error().contains("not sealed"), written.error());
    assertEquals(ExitCode.CANNOT_CREATE, run("summary", name, "--out", out.toString()).code());
  }

  @Test
  void aSealIsOpenedIntoANewFileOnly() throws IOException {
    String own = "four words are enough here";
    World.typed(List.of(own, own), "\n\n2\n1\n:q\n", with("interview"));
    String name = Cases.at(home()).store().names().get(0);
    Path copy = folder.resolve("copy.json");
    assertEquals(ExitCode.BAD_DATA, run("unlock", name, "--out", copy.toString()).code());
    assertFalse(Files.exists(copy));
    World wrong =
        World.typed(
            List.of("not these words", "nor these ones"),
            "",
            with("unlock", name, "--out", copy.toString()));
    assertEquals(ExitCode.BAD_DATA, wrong.code());
    World right = World.typed(List.of(own), "", with("unlock", name, "--out", copy.toString()));
    assertEquals(ExitCode.DONE, right.code(), right.error());
    assertTrue(Files.readString(copy).contains("\"consent.state\""));
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(copy)));
    assertEquals(ExitCode.NO_INPUT, run("unlock", "no-such", "--out", copy.toString()).code());
  }

  @Test
  void forgettingAsksAndLeavesNothing() throws IOException {
    String name = begun(TO_TEAM);
    Files.writeString(home().resolve(".save-" + name + ".77.tmp"), "{");
    assertEquals(ExitCode.USAGE, run("forget", name).code());
    assertTrue(Files.exists(home().resolve(name + ".json")));
    World no = World.typed("yes\n", with("forget", name));
    assertTrue(no.output().contains("It is kept."), no.output());
    World yes = World.typed(name + "\n", with("forget", name));
    assertEquals(ExitCode.DONE, yes.code(), yes.error());
    assertTrue(yes.output().contains("What this cannot reach"), yes.output());
    try (Stream<Path> files = Files.list(home())) {
      assertEquals(List.of(), files.toList());
    }
    assertEquals(ExitCode.NO_INPUT, run("forget", name, "--yes").code());
    assertEquals(ExitCode.NO_INPUT, run("forget", "../cases", "--yes").code());
  }

  @Test
  void whatCannotBeRemovedIsSaidToBeThere() throws IOException {
    String name = begun(TO_TEAM);
    Path page = home().resolve(name + "-player.txt");
    Files.delete(page);
    Path inside = Files.createDirectory(page).resolve("in the way");
    Files.writeString(inside, "x");
    World nothing = run("forget", name, "--yes");
    assertEquals(ExitCode.INPUT_OUTPUT, nothing.code(), nothing.error());
    assertTrue(nothing.error().contains("Nothing was removed"), nothing.error());
    assertTrue(Files.exists(home().resolve(name + ".json")));

    Files.delete(inside);
    Path previous = home().resolve(name + ".previous");
    Files.delete(previous);
    Files.writeString(Files.createDirectory(previous).resolve("in the way"), "x");
    World some = run("forget", name, "--yes");
    assertEquals(ExitCode.INPUT_OUTPUT, some.code());
    assertTrue(
        some.error().contains("Not everything was removed. Still there: " + name + ".previous."),
        some.error());
  }

  @Test
  void aCaseThatWasBrokenOffIsToldBeforeAnotherBegins() throws IOException {
    String name = begun(TO_TEAM);
    assertFalse(World.run("1\n", with("interview")).output().contains("unfinished"));
    Files.writeString(home().resolve(name + ".lock"), "");
    String said = World.run("1\n", with("interview")).output().replace('\n', ' ');
    int told = said.indexOf("1 case was left unfinished");
    assertTrue(told > 0 && told < said.indexOf("This case is called"), said);
    assertTrue(said.contains("closehand interview " + name), said);
  }

  @Test
  void whatNoLongerFitsIsToldByItsIdBeforeTheChoice() throws IOException {
    String name = begun(TO_TEAM);
    Path file = home().resolve(name + ".json");
    Files.writeString(file, Files.readString(file).replace("\"comm.mode\"", "\"comm.unheardOf\""));
    World world = World.typed("q\n", with("interview", name, "--line"));
    String said = world.output().replace('\n', ' ');
    int told = said.indexOf("no longer fit and are left out: comm.unheardOf");
    assertTrue(told > 0 && told < said.indexOf("go on (or press Enter)"), said);
    assertFalse(said.contains("No question has this id"), said);
  }
}
