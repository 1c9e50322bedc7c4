package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Problem;
import closehand.report.BankDifference;
import closehand.report.Glyphs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Two banks that differ in one value are never said to say the same: one value of every kind in
 * every file of the core bank is made another, one at a time. A build tries some kinds of each
 * file; {@code -Dclosehand.everyKind=true} tries them all, which takes minutes.
 */
class EveryDifferenceTest {
  private static final Path CORE = Path.of("question-banks/core");
  private static final int SOME = 32;
  private static final boolean ALL = Boolean.getBoolean("closehand.everyKind");

  /** What is neither used nor printed, so that no words tell of it. */
  private static final List<String> UNUSED =
      List.of(
          "/examples",
          "/note",
          "/designNote",
          "[designNote]",
          "/inputs[]/position",
          "bank.json/title",
          "cautions.json/cautions[]/class",
          "questionnaire.json/name",
          "questionnaire.json/status",
          "questionnaire.json/language",
          "questionnaire.json/subjectType",
          "/code[]/system",
          "item[group][group]/code",
          "[questionnaire-unit]/valueCoding/display",
          "[questionnaire-unit]/valueCoding/system",
          "[questionnaire-itemControl]");

  /** Lists whose order says nothing. */
  private static final List<String> ANY_ORDER =
      List.of(
          "control-plan.json/kinds",
          "control-plan.json/families",
          "control-plan.json/families[]/approaches",
          "control-plan.json/demand/directions",
          "control-plan.json/demand/ownDirections");

  private final MemoryBank core;
  private final Bank before;

  EveryDifferenceTest() throws IOException {
    core = MemoryBank.of(CORE);
    before = read(core).orElseThrow();
  }

  private static Optional<Bank> read(MemoryBank files) {
    try {
      return BankReader.read(files).bank();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One kind of value in one file. */
  private record Kind(String file, OneChange change, String kind) {}

  private List<Kind> kinds() {
    List<Kind> kinds = new ArrayList<>();
    for (String name : new TreeSet<>(core.files().keySet())) {
      OneChange change =
          new OneChange(
              JsonReader.read(name, core.files().get(name), new ArrayList<>()).orElseThrow());
      change.kinds().forEach(k -> kinds.add(new Kind(name, change, k)));
    }
    return kinds;
  }

  /** What is said of the bank with one value of this kind changed; empty where none can be. */
  private String said(Kind kind) {
    byte[] other =
        kind.change().firstLawful(kind.kind(), b -> lawful(kind, core.with(kind.file(), b)));
    return other.length == 0
        ? ""
        : BankDifference.of(
            before, read(core.with(kind.file(), other)).orElseThrow(), Glyphs.ASCII);
  }

  /** Operators and what they compare with are looked at when the bank is checked. */
  private static boolean lawful(Kind kind, MemoryBank files) {
    try {
      BankReader.Result result = BankReader.read(files);
      return result.bank().isPresent()
          && !(kind.kind().matches(".*\\[[12]].*") && Problem.anyError(result.draft().check()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean unused(Kind kind) {
    String name = kind.file() + kind.kind();
    return UNUSED.stream().anyMatch(name::contains)
        || ANY_ORDER.contains(name)
        || name.endsWith("/extension")
        || name.matches("questionnaire.json/item(\\[group])+(\\[\\w+])?");
  }

  @Test
  void everyKindOfValueIsToldWhenItChanges() {
    List<Kind> kinds = kinds();
    List<String> silent = new ArrayList<>();
    int told = 0;
    for (int i = 0; i < kinds.size(); i += ALL ? 1 : SOME) {
      Kind kind = kinds.get(i);
      String said = said(kind);
      told += said.contains(" difference") ? 1 : 0;
      if (said.contains("say the same") && !unused(kind)) {
        silent.add(kind.file() + kind.kind());
      }
    }
    assertEquals(List.of(), silent);
    assertTrue(told > kinds.size() / SOME / 2, told + " of " + kinds.size());
  }

  @Test
  void whatIsNeitherUsedNorPrintedIsSaidToBeThat() {
    Kind example = kinds().stream().filter(EveryDifferenceTest::unused).findFirst().orElseThrow();
    assertTrue(said(example).contains("Their files differ all the same"), said(example));
    assertFalse(BankDifference.of(before, before, Glyphs.ASCII).contains("differ all"));
  }
}
