package closehand.measure.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.measure.practice.LoggedPresses.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Presses that were logged elsewhere, by the same rules as those at the keyboard. */
class LoggedPressesTest {
  private final List<Entry> entries = new ArrayList<>();

  private void prompt(long millis, int action) {
    entries.add(new Entry.Prompt(millis, "act" + action));
  }

  private void press(long millis, int input) {
    entries.add(new Entry.Press(millis, Optional.of("in" + input)));
  }

  private List<Try> tries() {
    return new LoggedPresses(entries).tries(SomeSheet.twelve());
  }

  @Test
  void aHeldInputCountsOnceAndIsNoticed() {
    prompt(1_000, 3);
    press(1_600, 3);
    for (int i = 0; i < 20; i++) {
      press(2_200 + 40L * i, 3);
    }
    assertEquals(1, tries().size());
    assertTrue(tries().get(0).hit());
    assertEquals(600, tries().get(0).millis().orElseThrow());
    assertTrue(tries().get(0).marks().held());
  }

  @Test
  void aRoundThatWasDisturbedCountsForNothing() {
    entries.add(new Entry.Round(0));
    prompt(1_000, 1);
    press(1_500, 1);
    entries.add(new Entry.Round(9_000));
    prompt(10_000, 2);
    press(10_500, 2);
    entries.add(new Entry.Lost(10_600));
    entries.add(new Entry.Round(20_000));
    prompt(21_000, 4);
    press(21_500, 4);
    assertEquals(List.of("act1", "act4"), tries().stream().map(Try::action).toList());
    assertEquals(List.of(0, 2), tries().stream().map(Try::round).toList());
    assertEquals(1, new LoggedPresses(entries).lostRounds());
  }

  @Test
  void aPromptWithoutAPressIsAMissAndANeighbourIsKnownAsOne() {
    prompt(1_000, 0);
    prompt(5_000, 0);
    press(5_700, 1);
    prompt(9_000, 0);
    entries.add(new Entry.Press(9_600, Optional.empty()));
    List<Try> tries = tries();
    assertEquals(3, tries.size());
    assertFalse(tries.stream().anyMatch(Try::hit));
    assertEquals(Optional.of("in1"), tries.get(1).wrong());
    assertTrue(tries.get(1).beside());
    assertEquals(Optional.empty(), tries.get(2).wrong());
  }

  @Test
  void whatComesTooSoonToBeAnAnswerIsLeftOut() {
    prompt(1_000, 0);
    press(1_050, 0);
    assertEquals(List.of(), tries());
  }
}
