package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.GameProfile;
import closehand.bank.Source;
import closehand.bank.Where;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A bank small enough to read; every text and figure in it is invented. */
final class SmallBank {
  static final Where HERE = Where.file("small");

  static final Approach SET =
      approach("SET", "Settings first", "Settings first", "settings", false, "0");
  static final Approach MOUSE =
      approach("MOUSE_L", "Thumb mouse, left hand", "Thumb mouse, left", "mouse", false, "C");
  static final Approach FOOT =
      approach("FOOT", "Foot or knee switches", "Foot switches", "switch", true, "B", "C");
  static final Approach VOICE =
      approach("VOICE", "Spoken commands", "Spoken commands", "voice", false, "0", "B");
  static final Approach PAD_LEFT =
      approach("PAD_L", "One-handed pad, left hand", "One-handed pad, left", "pad", false, "D");
  static final Approach PAD_RIGHT =
      approach("PAD_R", "One-handed pad, right hand", "One-handed pad, right", "pad", false, "D");
  static final Approach BALL = approach("BALL", "Trackball", "Trackball", "ball", false, "C");

  static final Caution CHEST =
      caution(
          "C-CHEST",
          "Chest or breathing",
          "Chest signs need medical help before play.",
          List.of("Sit down and rest.", "Call the emergency number if it is happening now."),
          "Chest pain or breathlessness on small effort.",
          "Ask your doctor today.",
          CautionClass.STOP_ALL,
          CautionClass.STOP_TASKS);
  static final Caution SKIN =
      caution(
          "C-SKIN",
          "Skin check first",
          "Skin there needs checking before anything rests on it.",
          List.of("Ask a nurse to look at it today.", "Until then nothing rubs that place."),
          "",
          "Ask your nurse.",
          CautionClass.STOP_PART);
  static final Caution OVERUSE =
      care(
          "C-OVERUSE",
          "One limb does most of the work",
          "One limb is doing most of the work.",
          List.of("Put a limit on the jobs of that limb.", "Share jobs with a foot."),
          "Ask your clinician.");
  static final Caution SHOULDER =
      care(
          "C-SHOULDER",
          "Keep the shoulder supported",
          "That shoulder must stay supported.",
          List.of("Rest the arm on a table at all times."),
          "Ask your clinician.");
  static final Caution PRESSURE =
      care(
          "C-PRESSURE",
          "Pressure relief",
          "Play makes it easy to forget to shift your weight.",
          List.of("Set a reminder at your own interval."),
          "Ask your nurse.");
  static final Caution LEVEL =
      care(
          "C-AD",
          "Tight kit",
          "Tight kit can set off a dangerous reaction.",
          List.of(
              "Agree your plan before we start.",
              "Check your skin.",
              "Pounding headache and a flushed face: sit up, loosen, follow your plan."),
          "Ask your team. Call the emergency number if signs do not settle.");
  static final Caution FAINT =
      care(
          "C-FAINT",
          "Feeling faint",
          "You may feel faint when you are upright.",
          List.of(
              "Change position slowly.",
              "If you feel faint: lean back and raise your legs.",
              "With a pounding headache sit UP at once instead.",
              "If you pass out, call the emergency number."),
          "Tell your doctor.");
  static final Caution FRAGILE =
      care(
          "C-FRAGILE",
          "Light forces only",
          "Your bones are easily hurt, so we use light forces only.",
          List.of("Choose the lightest buttons.", "No straps and no clamps on your limbs."),
          "Ask your clinician.");
  static final Caution PAIN = care("C-PAIN2H", "Pain takes long to settle");
  static final Caution TIRES = care("C-FATIGUE", "You tire within the session");
  static final Caution CRASH = care("C-PEM", "Overdoing it costs days");
  static final Caution BREAKS =
      caution(
          "C-BREAK",
          "Short, frequent breaks",
          "Short, frequent breaks work best.",
          List.of("Pause often."),
          "",
          "",
          CautionClass.NOTE);

  private SmallBank() {}

  static Bank bank() {
    return new Bank(
        SmallQuestions.questionnaire(),
        List.of(),
        List.of(),
        Map.of(),
        List.of(SET, MOUSE, FOOT, VOICE, PAD_LEFT, PAD_RIGHT, BALL),
        List.of(
            new Approach.CostClass("0", "nothing to pay"),
            new Approach.CostClass("B", "up to about 50 coins"),
            new Approach.CostClass("C", "about 50 to 200 coins"),
            new Approach.CostClass("D", "about 200 to 1,000 coins")),
        List.of(),
        List.of(
            game("STA", "Story action", "Turn on auto-run.", "Pick a lower difficulty."),
            game("CIT", "City building", "Build while the game is paused.", "Turn on undo.")),
        List.of(CHEST, SKIN, OVERUSE, SHOULDER, PRESSURE, LEVEL, FAINT, PAIN, TIRES, CRASH, BREAKS),
        List.of(
            new Source("S1", "Breaks", "Somebody, a guide to breaks, 1999", "confirmed"),
            new Source("S2", "Mice", "Somebody else, on mice, 2001", "abstract only")),
        Optional.empty(),
        Optional.empty(),
        "feed");
  }

  private static Approach approach(
      String id, String name, String brief, String family, boolean mount, String... cost) {
    Approach.Span none = new Approach.Span(0, 0, "0.5 to 1 N.");
    return new Approach(
        id,
        new Approach.Words(
            name,
            brief,
            "What this is, in one sentence.",
            "Some inputs.",
            "Some part of you.",
            "",
            "",
            "Calm games.",
            "Fast games.",
            "Little load.",
            "Leave it out while it hurts.",
            "On a board that does not slip.",
            "Borrow one before you buy it.",
            "Try it for ten minutes."),
        List.of(),
        none,
        none,
        OptionalDouble.empty(),
        none,
        new Approach.Span(10, 20, ""),
        List.of(cost),
        mount,
        false,
        "both",
        family,
        List.of("S2", "practice estimate"),
        HERE);
  }

  private static Caution care(String code, String title) {
    return care(
        code, title, title + ", so we go gently.", List.of("Rest early."), "Ask your team.");
  }

  private static Caution care(
      String code, String title, String message, List<String> actions, String contact) {
    return caution(code, title, message, actions, "", contact, CautionClass.CARE);
  }

  private static Caution caution(
      String code,
      String title,
      String message,
      List<String> actions,
      String clinician,
      String contact,
      CautionClass... classes) {
    return new Caution(
        code, List.of(classes), true, true, title, message, actions, clinician, contact, HERE);
  }

  private static GameProfile game(String genre, String title, String... settings) {
    return new GameProfile(
        genre, title, "", List.of(settings), List.of(), List.of("practice estimate"), HERE);
  }
}
