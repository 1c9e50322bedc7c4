package closehand.interview;

import static closehand.interview.Forms.form;
import static closehand.interview.Forms.is;
import static closehand.interview.Forms.one;
import static closehand.interview.Forms.question;
import static closehand.interview.Forms.section;
import static closehand.interview.Forms.several;
import static closehand.interview.Forms.whole;
import static closehand.interview.Forms.words;
import static closehand.interview.Forms.yesNo;
import static closehand.interview.Story.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Questionnaire;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which question comes when. */
class InterviewStoryTest {
  private static final Questionnaire HANDS =
      form(
          section("REV", question("REV-01", whole("trial.pain", 0, 10, "{score}"))),
          section(
              "CON",
              question("CON-01", one("consent.state", "yes", "notToday", "no")),
              question("CON-06", one("session.mode", "room", "video"))),
          section(
              "HND",
              question(
                  "HND-03", one("hand.L.role", "none", "full"), one("hand.R.role", "none", "full")),
              question(
                  "HND-04",
                  whole("arm.L.reachCm", 0, 60, "cm").when(is("hand.L.role", "full")),
                  whole("arm.R.reachCm", 0, 60, "cm").when(is("hand.R.role", "full"))),
              question("HND-06", words("wrist.L")).onlyInFull(),
              question("HND-08", several("grip.L.types", "none!", "power", "tip")).followUp()),
          section("SIT", question("SIT-04", one("breath.sip", "0", "1")).forClinician()));

  private static Story started() {
    return given(HANDS).answer("consent.state", "yes").answer("session.mode", "room");
  }

  @Test
  void answersOpenWhatFollows() {
    started()
        .answer("hand.L.role", "full")
        .expectNext("hand.R.role")
        .answer("hand.R.role", "none")
        .expectNext("arm.L.reachCm")
        .answer("arm.L.reachCm", "25")
        .expectNext("grip.L.types")
        .answer("grip.L.types", "power tip")
        .expectFinished()
        .expectValue("grip.L.types", new Value.Codes(List.of("power", "tip")));
  }

  @Test
  void aChangedMindSetsAnswersAsideAndBringsThemBack() {
    Story story =
        started()
            .answer("hand.L.role", "full")
            .answer("hand.R.role", "none")
            .answer("arm.L.reachCm", "25")
            .jump("hand.L.role")
            .answer("hand.L.role", "none")
            .expectNext("grip.L.types");
    assertEquals(Optional.of(new Value.Number(25)), story.now().setAside().value("arm.L.reachCm"));
    assertEquals(Optional.empty(), story.now().effective().value("arm.L.reachCm"));

    story.jump("hand.L.role").answer("hand.L.role", "full").expectNext("grip.L.types");
    assertEquals(Optional.of(new Value.Number(25)), story.now().effective().value("arm.L.reachCm"));
    assertTrue(story.now().setAside().byFact().isEmpty());
  }

  @Test
  void backWalksTheWayThatWasShownAndSurvivesJumps() {
    started()
        .answer("hand.L.role", "full")
        .jump("grip.L.types")
        .back()
        .expectNext("hand.R.role")
        .back()
        .expectNext("hand.L.role")
        .back()
        .expectNext("session.mode")
        .back()
        .expectNext("consent.state")
        .back()
        .expectRefused("where the sitting began")
        .answer("consent.state", "yes")
        .expectNext("hand.R.role");
  }

  @Test
  void afterAJumpTheWayGoesForwardAndThenAroundToWhatWasLeft() {
    started()
        .jump("HND-08")
        .answer("grip.L.types", "none")
        .expectNext("hand.L.role")
        .answer("hand.L.role", "none")
        .answer("hand.R.role", "none")
        .expectFinished();
  }

  @Test
  void whatIsPassedStaysOpenButIsNotAskedAgainInThisSitting() {
    Story story =
        started()
            .onward()
            .expectNext("hand.R.role")
            .answer("hand.R.role", "none")
            .say(Answer.Reason.LATER)
            .expectFinished()
            .expectOpen("hand.L.role", "grip.L.types", "breath.sip");
    assertEquals(
        List.of(StillOpen.Why.SKIPPED, StillOpen.Why.LATER, StillOpen.Why.FOR_CLINICIAN),
        story.now().open().stream().map(StillOpen::why).toList());

    story
        .resume()
        .answer("consent.state", "yes")
        .expectNext("hand.L.role")
        .answer("hand.L.role", "none")
        .expectNext("grip.L.types");
  }

  @Test
  void declinedAndUnknownAreAnswersAndNeverAskedAgainUnasked() {
    started()
        .say(Answer.Reason.DECLINED)
        .expectNext("hand.R.role")
        .say(Answer.Reason.UNKNOWN)
        .expectNext("grip.L.types")
        .say(Answer.Reason.NOT_APPLICABLE)
        .expectFinished()
        .expectOpen("breath.sip");
  }

  @Test
  void aCliniciansQuestionIsLeftAndSaidSoOnce() {
    Story story =
        started()
            .answer("hand.L.role", "none")
            .answer("hand.R.role", "none")
            .answer("grip.L.types", "none")
            .expectPassedOver("breath.sip")
            .expectFinished()
            .jump("SIT-04")
            .expectRefused("Only a clinician may ask this")
            .jump("HND-03")
            .answer("hand.L.role", "none")
            .expectFinished()
            .expectPassedOver();
    assertEquals(1, story.now().leftForClinician().size());

    story
        .send(new Message.Conduct(Provenance.By.CLINICIAN))
        .expectNext("breath.sip")
        .send(new Message.Conduct(Provenance.By.VOLUNTEER))
        .expectFinished();
  }

  @Test
  void theWholeInterviewAsksMoreAndEndsWithTheReview() {
    Story story =
        started()
            .answer("hand.L.role", "none")
            .answer("hand.R.role", "none")
            .expectNext("grip.L.types")
            .send(new Message.TakeRoute(Interview.Route.FULL))
            .answer("grip.L.types", "none")
            .expectNext("wrist.L")
            .answer("wrist.L", "sore in the morning")
            .expectNext("trial.pain")
            .answer("trial.pain", "2")
            .expectFinished();
    assertEquals("SIT-04", story.now().open().get(0).question().id());
  }

  @Test
  void aReviewQuestionIsReachedByAJumpOnTheShortRoute() {
    started()
        .jump("REV-01")
        .expectNext("trial.pain")
        .answer("trial.pain", "3")
        .expectNext("hand.L.role");
  }

  @Test
  void aLineFillsTheFieldsOfOneQuestion() {
    Story story = started();
    assertEquals(
        List.of("hand.L.role", "hand.R.role"),
        story.now().lineOfFields().stream().map(f -> f.fact()).toList());
    story
        .answerFor("hand.L.role", new Value.Code("full"))
        .expectNext("hand.R.role")
        .answerFor("hand.R.role", new Value.Code("full"))
        .expectNext("arm.L.reachCm")
        .answerFor("arm.R.reachCm", new Value.Number(12))
        .expectNext("arm.L.reachCm")
        .answerFor("arm.X.reachCm", new Value.Number(12))
        .expectRefused("There is no question called \"arm.X.reachCm\". Did you mean");
  }

  @Test
  void aValueForAFieldThatDoesNotApplyIsRefused() {
    started().answerFor("arm.L.reachCm", new Value.Number(3)).expectRefused("does not apply");
  }

  @Test
  void aRefusalChangesNothingElse() {
    Story story = started();
    Interview before = story.now();
    story
        .send(new Message.Give(new Value.Code("both"), Provenance.PLAYER_TOLD))
        .expectRefused("Please pick one: 1 Say none, 2 Say full.");
    assertEquals(before.answers(), story.now().answers());
    assertEquals(before.at(), story.now().at());
    assertEquals(before.sitting(), story.now().sitting());
    story.answer("hand.L.role", "full").expectNext("hand.R.role");
  }

  @Test
  void aNoteStandsBesideTheAnswerShownOrTheOneJustGiven() {
    Story story = started().note("by the window");
    assertEquals("by the window", noteOf(story, "session.mode"));
    story.back().note("says it quietly").expectNext("session.mode");
    assertEquals("says it quietly", noteOf(story, "session.mode"));
    story.answer("session.mode", "video");
    assertEquals("says it quietly", noteOf(story, "session.mode"));
    story.note("");
    assertEquals("", noteOf(story, "session.mode"));
    given(HANDS).note("too early").expectRefused("no answer yet");
    story.note("x".repeat(1001)).expectRefused("at most 1000");
  }

  private static String noteOf(Story story, String fact) {
    return Objects.requireNonNull(story.now().answers().byFact().get(fact)).provenance().note();
  }

  @Test
  void onlyAClinicianLowersAStop() {
    Message lower =
        new Message.Lower(new Answers.Lowered("C-SKIN", "A. Therapist", "2026-11-20", "healed"));
    Story story = started().send(lower).expectRefused("Only a clinician");
    assertFalse(story.now().answers().isLowered("C-SKIN"));
    story.send(new Message.Conduct(Provenance.By.CLINICIAN)).send(lower);
    assertTrue(story.now().answers().isLowered("C-SKIN"));
    story
        .send(new Message.Lower(new Answers.Lowered("C-NECK", "A. Therapist", "2026-11-20", " ")))
        .expectRefused("a name, a date and a reason");
  }

  @Test
  void aSavedCaseBeginsWithConsentAndGoesOnWhereItStood() {
    Interview saved = started().answer("hand.L.role", "full").jump("grip.L.types").now();
    Interview again =
        Interview.reopen(
            HANDS, saved.answers(), saved.route(), Provenance.By.HELPER, saved.bookmark());
    Story.of(again)
        .expectNext("grip.L.types")
        .resume()
        .expectNext("consent.state")
        .expectAgain(Prompt.Again.AFTER_BREAK)
        .jump("hand.R.role")
        .expectRefused("happy to go on")
        .onward()
        .expectRefused("please answer it")
        .answer("consent.state", "yes")
        .expectNext("grip.L.types");
  }

  @Test
  void aNewInterviewHasNothingToResume() {
    given(HANDS).resume().expectNext("consent.state").expectAgain(Prompt.Again.NO);
  }

  @Test
  void jumpsToNowhereAreRefusedWithAHint() {
    started()
        .jump("HND-33")
        .expectRefused("There is no question called \"HND-33\". Did you mean \"HND-03\"?")
        .jump("hnd-03")
        .expectNext("hand.L.role")
        .jump("HND-04")
        .expectRefused("does not apply");
  }

  @Test
  void anEmptyQuestionnaireIsFinishedAtOnce() {
    given(form())
        .expectFinished()
        .onward()
        .expectRefused("no question")
        .say(Answer.Reason.UNKNOWN)
        .expectRefused("no question");
    given(form(section("A", question("A-1", yesNo("a"))))).answer("a", "y").expectFinished();
  }
}
