package closehand.interview;

import static closehand.interview.Forms.form;
import static closehand.interview.Forms.is;
import static closehand.interview.Forms.one;
import static closehand.interview.Forms.question;
import static closehand.interview.Forms.section;
import static closehand.interview.Forms.several;
import static closehand.interview.Forms.whole;
import static closehand.interview.Forms.yesNo;
import static closehand.interview.Story.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FactType;
import closehand.bank.Questionnaire;
import closehand.bank.TaskKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a face is given to show. */
class ViewsTest {
  private static final Questionnaire FORM =
      form(
          section("CON", question("CON-06", one("session.mode", "room", "video"))),
          section(
              "HND",
              question("HND-03", one("role.L", "none", "full"), one("role.R", "none", "full"))
                  .overVideo("On camera: what can each hand do?"),
              question("HND-04", whole("reach.L", 0, 60, "cm").when(is("role.L", "full"))),
              question("HND-05", yesNo("deep").when(is("role.L", "full"))).followUp(),
              question("HND-06", yesNo("extra")).onlyInFull(),
              question("HND-09", whole("grip.L", 0, 4, "1").task(TaskKind.STRENGTH))),
          section("SIT", question("SIT-04", yesNo("sip")).forClinician()),
          section("REV", question("REV-01", whole("trial.pain", 0, 10, "{score}"))));

  @Test
  void theWordingFollowsWhereTheTalkIs() {
    Prompt unknown = given(FORM).now().current().orElseThrow();
    assertEquals(
        List.of("In the room: look at CON-06", "On a call: film CON-06"), unknown.howToSee());
    Prompt room = given(FORM).answer("session.mode", "room").now().current().orElseThrow();
    assertEquals(List.of("look at HND-03"), room.howToSee());
    assertEquals("Question HND-03", room.questionText());
    Prompt video = given(FORM).answer("session.mode", "video").now().current().orElseThrow();
    assertEquals(List.of("film HND-03"), video.howToSee());
    assertEquals("On camera: what can each hand do?", video.questionText());
  }

  @Test
  void thePositionIsSaidInWords() {
    Story story = given(FORM);
    // Reviews and whole-interview questions are not counted, follow-ups not before they apply.
    assertEquals("Question 1 of about 5, part 1 of 3: Part CON", position(story));
    story.answer("session.mode", "room");
    assertEquals("Question 2 of about 5, part 2 of 3: Part HND", position(story));
    assertTrue(story.now().current().orElseThrow().firstOfQuestion());
    story.answer("role.L", "full");
    assertEquals("Question 2 of about 6, part 2 of 3: Part HND", position(story));
    assertFalse(story.now().current().orElseThrow().firstOfQuestion());
    story.jump("extra");
    assertEquals("Extra question HND-06, part 2 of 3: Part HND", position(story));
    story.jump("role.L").answer("role.L", "none");
    assertEquals("Question 2 of about 4, part 2 of 3: Part HND", position(story));
    story.send(new Message.TakeRoute(Interview.Route.FULL));
    assertEquals("Question 2 of about 6, part 2 of 4: Part HND", position(story));
  }

  private static String position(Story story) {
    return story.now().current().orElseThrow().position();
  }

  @Test
  void progressIsSaidInWords() {
    Story story = given(FORM).answer("session.mode", "room").onward().answer("role.R", "none");
    assertEquals(
        "1 of about 5 questions answered, 4 still open. 1 put off for later. 1 left for a clinician.",
        story.now().progress().words());
    story.hold(TaskKind.STRENGTH);
    assertEquals(1, story.now().progress().held());
    assertEquals(1, story.now().answeredCount());
  }

  @Test
  void theOverviewHasEveryAnswerInWordsAndEverythingOpenWithItsReason() {
    Story story =
        given(FORM)
            .answer("session.mode", "room")
            .answer("role.L", "full")
            .answer("role.R", "none")
            .answer("reach.L", "12")
            .say(Answer.Reason.DECLINED)
            .hold(TaskKind.STRENGTH)
            .jump("role.L")
            .answer("role.L", "none");
    List<String> rows =
        story.now().overview().parts().stream()
            .flatMap(p -> p.rows().stream().map(r -> line(p, r)))
            .toList();
    assertEquals(
        List.of(
            "CON session.mode ANSWERED Say room",
            "HND role.L ANSWERED Say none",
            "HND role.R ANSWERED Say none",
            "HND reach.L SET_ASIDE 12 cm",
            "HND deep SET_ASIDE rather not say",
            "HND grip.L HELD This must wait: strength tasks are on hold.",
            "SIT sip FOR_CLINICIAN Only a clinician may ask this."),
        rows);
  }

  private static String line(Overview.Part part, Overview.Row row) {
    return part.id() + " " + row.field().fact() + " " + row.state() + " " + row.words();
  }

  @Test
  void answersReadAsAPersonWouldSayThem() {
    FactType minutes = new FactType.Amount(0, 240, 0, "min");
    assertEquals("1 minute", Wording.of(minutes, new Value.Number(1)));
    assertEquals("45 minutes", Wording.of(minutes, new Value.Number(45)));
    FactType score = new FactType.Amount(0, 10, 0, "{score}");
    assertEquals("7", Wording.of(score, new Value.Number(7)));
    FactType percent = new FactType.Amount(0, 100, 0, "%");
    assertEquals("40%", Wording.of(percent, new Value.Number(40)));
    FactType size = new FactType.Amount(12, 23, 1, "cm");
    assertEquals("17.5 cm", Wording.of(size, new Value.Number(17.5)));
    assertEquals("17 cm", Wording.of(size, new Value.Number(17.0)));
    FactType taps = new FactType.Amount(0, 80, 0, "{press}");
    assertEquals("31 taps", Wording.of(taps, new Value.Number(31)));
    FactType holds = several("g", "none!", "power", "tip").field().type();
    assertEquals("Say power, Say tip", Wording.of(holds, new Value.Codes(List.of("power", "tip"))));
    assertEquals("None of these", Wording.of(holds, new Value.Codes(List.of())));
    assertEquals("Yes", Wording.of(new FactType.YesNo(), new Value.Flag(true)));
    assertEquals("gone", Wording.of(holds, new Value.Code("gone")));
    assertEquals("don't know", Wording.of(Answer.Reason.UNKNOWN));
  }
}
