package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.rules.Advice;
import closehand.rules.Standing;
import closehand.screen.frame.ScreenSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A13: whole interviews with Space and Enter alone, and with the ten digits alone. */
class WholeInterviewTest {
  @ParameterizedTest
  @CsvSource({"TWO_KEYS,80,24,0", "DIGITS,80,24,0", "TWO_KEYS,40,12,4", "DIGITS,40,12,7"})
  void aWholeInterviewComesToTheAdviceOfItsFile(
      Player.Means means, int columns, int rows, int number) {
    Answers wanted = CoreDesk.goldCase(number);
    Player player = new Player(means, new ScreenSize(columns, rows));
    player.take(o -> o.words().equals("Start a new interview"));
    player.take(o -> o.words().startsWith("A clinician"));
    player.take(o -> o.words().startsWith("The whole interview"));
    player.take(o -> o.words().startsWith("Not sealed"));
    assertEquals(Interview.Route.FULL, player.interview().route());
    assertEquals(Provenance.By.CLINICIAN, player.interview().asker());

    player.answer(wanted);

    Advice filed = CoreDesk.RULES.advise(wanted);
    Advice typed = CoreDesk.RULES.advise(player.interview().answers());
    assertEquals(points(filed), points(typed));
    assertTrue(player.desk().kept().size() > 100, "kept after every answer");
    assertEquals(
        player.interview().answers(),
        player.desk().kept().get(player.desk().kept().size() - 1).answers());

    player.take(o -> o.words().equals("The page"));
    assertTrue(player.model().shown().heading().contains("page"));
    player.take(o -> o.words().equals("Back"));
    player.take(o -> o.words().startsWith("Leave"));
    assertEquals(
        Optional.of(Effect.Ending.FINISHED), player.take(o -> o.words().startsWith("Leave")));
  }

  private static List<String> points(Advice advice) {
    List<String> points = new ArrayList<>();
    for (Standing standing : advice.suggestions()) {
      points.add(standing.approach().id() + " " + standing.points());
    }
    return points;
  }
}
