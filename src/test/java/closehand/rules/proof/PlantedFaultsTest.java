package closehand.rules.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.rules.GoldAnswers;
import closehand.rules.RuleBook;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Ten faults of each kind, planted in a copy of the core bank, are all found. */
class PlantedFaultsTest {
  private static final Bank CORE = GoldAnswers.bank();
  private static final List<Advisory> BEFORE = DeepCheck.of(CORE);

  @Test
  void tenFaultsOfEachKindAreAllFound() {
    Planting planting = new Planting(CORE);
    planting.plantAll();
    Set<String> found = new HashSet<>();
    for (Advisory one : DeepCheck.of(planting.bank())) {
      one.subjects().forEach(s -> found.add(one.kind() + " " + s));
    }
    List<String> missed = new ArrayList<>(planting.expected());
    missed.removeAll(found);
    assertEquals(List.of(), missed);
    assertEquals(130, planting.expected().size());
  }

  @Test
  void aWitnessOfOverlappingBandsMakesBothFire() {
    RuleBook book = RuleBook.of(CORE);
    int shown = 0;
    for (Advisory one : BEFORE) {
      if (one.kind() == Advisory.Kind.BAND_OVERLAP && one.witness().isPresent()) {
        List<String> firing =
            book.advise(one.witness().get()).findings().stream()
                .filter(f -> f.outcome() == closehand.rules.Outcome.TRUE)
                .map(f -> f.rule().key())
                .toList();
        assertTrue(firing.containsAll(one.subjects()), one.subjects() + " of " + firing);
        shown++;
      }
    }
    assertTrue(shown > 0);
  }

  @Test
  void everythingExcludedAtOnceIsShownByAnswers() {
    Planting planting = new Planting(CORE);
    planting.excludeEverything();
    Advisory all =
        DeepCheck.of(planting.bank()).stream()
            .filter(a -> a.kind() == Advisory.Kind.ALL_EXCLUDED)
            .findFirst()
            .orElseThrow();
    RuleBook book = RuleBook.of(planting.bank());
    assertTrue(
        book.advise(all.witness().orElseThrow()).standings().stream()
            .filter(s -> !s.approach().family().equals("settings"))
            .allMatch(s -> s.status() == closehand.rules.Standing.Status.RULED_OUT));
  }

  @Test
  void onTheCoreBankNothingIsLeftUnproven() {
    assertTrue(BEFORE.stream().noneMatch(a -> a.proof() == Advisory.Proof.NOT_PROVEN));
    assertEquals(BEFORE, DeepCheck.of(CORE), "the same each time");
  }

  @Test
  void withoutABudgetFindingsSayThatTheyAreNotProven() {
    assertTrue(
        DeepCheck.of(CORE, 1).stream().anyMatch(a -> a.proof() == Advisory.Proof.NOT_PROVEN));
  }
}
