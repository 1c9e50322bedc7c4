package closehand.rules.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.rules.GoldAnswers;
import closehand.rules.RuleBook;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ten faults of each kind, planted in copies of the core bank, are all found. */
class PlantedFaultsTest {
  private static final Bank CORE = GoldAnswers.bank();
  private static final List<Advisory> BEFORE = DeepCheck.of(CORE);

  /** How many findings of each kind come with answers that the rules themselves bear out. */
  private static Map<Advisory.Kind, Integer> replayed(Bank bank, List<Advisory> found) {
    Replayed replayed = new Replayed(RuleBook.of(bank));
    Map<Advisory.Kind, Integer> shown = new EnumMap<>(Advisory.Kind.class);
    for (Advisory one : found) {
      if (one.witness().isPresent()) {
        replayed.holds(one);
        shown.merge(one.kind(), 1, Integer::sum);
      }
    }
    return shown;
  }

  @Test
  void tenFaultsOfEachKindAreAllFoundAndWhatShowsThemDoes() {
    Planting planting = new Planting(CORE);
    planting.plantAll();
    List<Advisory> findings = DeepCheck.of(planting.bank());
    Set<String> found = new HashSet<>();
    for (Advisory one : findings) {
      one.subjects().forEach(s -> found.add(one.kind() + " " + s));
    }
    List<String> missed = new ArrayList<>(planting.expected());
    missed.removeAll(found);
    assertEquals(List.of(), missed);
    Map<Advisory.Kind, Integer> each = new EnumMap<>(Advisory.Kind.class);
    for (String expected : planting.expected()) {
      each.merge(Advisory.Kind.valueOf(expected.split(" ")[0]), 1, Integer::sum);
    }
    Set<Advisory.Kind> planted = EnumSet.allOf(Advisory.Kind.class);
    planted.remove(Advisory.Kind.ALL_EXCLUDED);
    assertEquals(planted, each.keySet());
    assertTrue(each.values().stream().allMatch(n -> n >= 10), each.toString());
    Map<Advisory.Kind, Integer> shown = replayed(planting.bank(), findings);
    for (Advisory.Kind kind :
        List.of(
            Advisory.Kind.SAYS_THE_SAME,
            Advisory.Kind.CONTRADICTS,
            Advisory.Kind.POINTS_NEVER_COUNT,
            Advisory.Kind.BAND_GAP,
            Advisory.Kind.BAND_OVERLAP)) {
      assertTrue(shown.getOrDefault(kind, 0) >= 10, kind + " " + shown);
    }
    List<Advisory> unproven =
        findings.stream().filter(a -> a.proof() == Advisory.Proof.NOT_PROVEN).toList();
    assertTrue(unproven.size() * 20 < findings.size(), unproven.size() + " not proven");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 7, 9, 12, 20, 27})
  void everythingExcludedAtOnceIsShownByAnswers(int groups) {
    Planting planting = new Planting(CORE);
    planting.excludeEverything(groups);
    List<Advisory> all =
        DeepCheck.of(planting.bank()).stream()
            .filter(a -> a.kind() == Advisory.Kind.ALL_EXCLUDED)
            .toList();
    assertEquals(1, replayed(planting.bank(), all).get(Advisory.Kind.ALL_EXCLUDED));
  }

  @Test
  void whatIsExcludedInTurnsIsNotExcludedAtOnce() {
    Planting planting = new Planting(CORE);
    planting.excludeEverythingButNeverAtOnce();
    assertTrue(
        DeepCheck.of(planting.bank()).stream()
            .noneMatch(a -> a.kind() == Advisory.Kind.ALL_EXCLUDED));
  }

  /** One step is enough to see that two rules with one condition gainsay each other. */
  @Test
  void ruledOutByTheSameConditionIsProvenWithoutASearchAndTheOtherRuleIsNamed() {
    Planting planting = new Planting(CORE);
    List<String> expected = planting.excludeWhatIsGiven();
    assertTrue(expected.size() > 50, "planted: " + expected.size());
    Bank bank = planting.bank();
    List<Advisory> found = new ArrayList<>();
    closehand.rules.RuleBook book = RuleBook.of(bank);
    Firing firing =
        new Firing(closehand.rules.Search.of(book, 1), closehand.rules.Reading.of(book));
    new Against(bank, firing).points(found);
    List<String> proven = new ArrayList<>();
    for (Advisory one : found) {
      if (one.kind() == Advisory.Kind.POINTS_NEVER_COUNT) {
        assertEquals(Advisory.Proof.EXHAUSTED, one.proof(), one.subjects().toString());
        assertEquals(2, one.subjects().size(), one.subjects().toString());
        proven.add(one.subjects().get(0) + " " + one.details().get(0));
      }
    }
    assertEquals(new HashSet<>(expected), new HashSet<>(proven));
  }

  @Test
  void whatShowsTheFindingsOfTheCoreBankDoes() {
    Map<Advisory.Kind, Integer> shown = replayed(CORE, BEFORE);
    assertTrue(shown.getOrDefault(Advisory.Kind.BAND_OVERLAP, 0) > 0, shown.toString());
    assertTrue(shown.getOrDefault(Advisory.Kind.SAYS_THE_SAME, 0) > 0, shown.toString());
  }

  @Test
  void onTheCoreBankNothingIsLeftUnproven() {
    assertTrue(BEFORE.stream().noneMatch(a -> a.proof() == Advisory.Proof.NOT_PROVEN));
    assertEquals(BEFORE, DeepCheck.of(CORE), "the same each time");
  }

  @Test
  void withoutABudgetFindingsSayAfterHowManyStepsTheyWereGivenUp() {
    List<Advisory> open =
        DeepCheck.of(CORE, 1).stream().filter(a -> a.proof() == Advisory.Proof.NOT_PROVEN).toList();
    assertTrue(!open.isEmpty() && open.stream().allMatch(a -> a.steps() == 1), open.toString());
  }
}
