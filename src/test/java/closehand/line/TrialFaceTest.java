package closehand.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.CoreStops;
import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each of the ten signs stops a trial line by line, by its number at once or when it is asked. */
class TrialFaceTest {
  private final List<String> said = new ArrayList<>();
  private final List<Trial> kept = new ArrayList<>();

  private Trial trial(String... lines) {
    TrialFace face =
        new TrialFace(
            new Typing(new ArrayDeque<>(List.of(lines))),
            TrialDialogue.on(Trial.begun("2026-11-25"), List.of(), CoreStops.all()),
            trial -> {
              kept.add(trial);
              return List.of();
            });
    assertEquals(
        TrialFace.Ending.INPUT_ENDED, face.run(), "what comes after a stop is still asked");
    return face.trial();
  }

  private final class Typing implements Console {
    private final Deque<String> lines;

    Typing(Deque<String> lines) {
      this.lines = lines;
    }

    @Override
    public void say(String paragraph) {
      said.add(paragraph);
    }

    @Override
    public void item(String mark, String text) {
      said.add(mark + "  " + text);
    }

    @Override
    public void lines(List<String> some) {
      said.addAll(some);
    }

    @Override
    public void gap() {}

    @Override
    public Optional<String> ask(String prompt) {
      return Optional.ofNullable(lines.poll());
    }

    @Override
    public boolean scripted() {
      return false;
    }

    @Override
    public int lineNumber() {
      return 0;
    }
  }

  @ParameterizedTest
  @EnumSource(StopSign.class)
  void everySignStopsAtOnceIsSaidAndKept(StopSign sign) {
    String number = Integer.toString(sign.ordinal() + 1);
    for (String[] lines : new String[][] {{"y", "1", "s " + number}, {"y", "1", "stop", number}}) {
      said.clear();
      kept.clear();
      assertEquals(Optional.of(sign), trial(lines).stopped());
      assertEquals(Optional.of(sign), kept.get(kept.size() - 1).stopped(), "kept");
      assertTrue(said.containsAll(CoreStops.all().of(sign).then()), said.toString());
    }
  }
}
