package closehand.report;

import static closehand.report.Story.advises;
import static closehand.report.Story.because;
import static closehand.report.Story.supports;
import static closehand.report.Story.tires;

import closehand.interview.Answer;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.rules.Standing;
import java.util.List;

/** Invented players whose pages several tests read. */
final class Stories {
  private Stories() {}

  /** Somebody whose left hand works; a whole interview with cautions, ideas and two games. */
  static Story leftHanded() {
    return Story.player()
        .picks("consent.state", "yes")
        .picks("session.mode", "room")
        .picks("safe.chest", "no")
        .picks("safe.skin", "none")
        .tells("goal.main", "Walk & fight again, like Zo\u00eb")
        .says("goal.good", new Value.Codes(List.of("relax")))
        .tells("goal.good.words", "finish one chapter")
        .counts("goal.sessionMin", 60)
        .counts("end.minutes", 40)
        .counts("pain.now", 1)
        .picks("digit.L.press.T", "4")
        .picks("digit.L.press.I", "4")
        .picks("digit.L.press.M", "2")
        .says(
            "digit.R.press.T",
            new Value.Code("0"),
            new Provenance(Provenance.By.HELPER, Provenance.How.SEEN, "tired by noon"))
        .leavesOut("digit.R.press.I", Answer.Reason.DECLINED)
        .says("digit.L.panel.T", new Value.Codes(List.of("A1", "B2")))
        .picks("seat.trunk", "steady")
        .picks("env.noise", "quiet")
        .says("voice.chat", new Value.Flag(false))
        .picks("games.1.genre", "STA")
        .tells("games.1.name", "the castle one")
        .picks("games.1.mode", "solo")
        .picks("games.2.genre", "CIT")
        .cares(SmallBank.OVERUSE, because("R069", "One hand would do most of the work."))
        .cares(
            SmallBank.SHOULDER,
            because("R042", "R", "Your right shoulder slips, so that arm stays supported."))
        .cares(SmallBank.PRESSURE, because("R081", "You play in a wheelchair."))
        .notes(SmallBank.BREAKS)
        .suggests(
            SmallBank.SET, supports("R111", SmallBank.SET, 3, "Settings cost nothing to try."))
        .suggests(
            SmallBank.MOUSE,
            supports("R025", SmallBank.MOUSE, 3, "Your left thumb reaches two side cells."),
            supports("R026", SmallBank.MOUSE, 1, "Your left hand slides a mouse."))
        .suggestsDespite(
            SmallBank.FOOT,
            supports("R084", SmallBank.FOOT, 2, "Your left foot presses well."),
            supports("R085", SmallBank.FOOT, -1, "A switch on the floor can slip."))
        .suggests(SmallBank.VOICE, supports("R092", SmallBank.VOICE, 1, "Words are caught well."))
        .changes(SmallBank.MOUSE, "env.noise", "Loud", Standing.Status.RULED_OUT)
        .undecided(SmallBank.BALL, "voice.chat")
        .rulesOut(SmallBank.PAD_RIGHT, because("R032", "R", "Your right side does not press."))
        .rulesOut(SmallBank.PAD_LEFT, because("R032", "L", "Your left side does not press."))
        .fires(advises("R048", "L.T", "settings", "Swap holds on your left thumb for a toggle."))
        .fires(
            advises(
                "R048", "L.I", "settings", "Swap holds on your left index finger for a toggle."))
        .fires(advises("R120", "", "learn", "When the first actions feel easy, add two a week."))
        .fires(advises("R085", "", "stop", "Stop if your foot swells."))
        .fires(tires("R060", "L.T", 1.8))
        .fires(tires("R060", "L.I", 1.8))
        .alone(1, Story.player().suggests(SmallBank.MOUSE).advice())
        .alone(2, Story.player().suggests(SmallBank.VOICE).advice());
  }
}
