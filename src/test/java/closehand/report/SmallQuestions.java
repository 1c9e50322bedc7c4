package closehand.report;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The questions of the small bank. */
final class SmallQuestions {
  private static final FactType WORDS = new FactType.Words(200);

  private SmallQuestions() {}

  static Questionnaire questionnaire() {
    return new Questionnaire(
        "http://small.invalid/questions",
        "0.1",
        "Small interview",
        List.of(
            section("CON", "Start and consent", consent()),
            section("SAF", "Warning signs", safety()),
            section("GOA", "What you want", goals()),
            section("DIG", "Fingers and thumbs", fingers()),
            section("PLA", "Place and games", place())),
        Map.of());
  }

  private static List<Question> consent() {
    return List.of(
        asked(
            "CON-01",
            "Ready to start",
            field("consent.state", "Are you happy to start?", one("yes:Yes, I am", "no:No"))),
        asked(
            "CON-06",
            "Where we meet",
            field(
                "session.mode", "Where are we meeting?", one("room:In one room", "video:Video"))));
  }

  private static List<Question> safety() {
    FactType where = several("armL:Left arm or hand", "armR:Right arm or hand");
    return List.of(
        question(
            "SAF-03",
            "Chest and breath",
            Question.AskedBy.VOLUNTEER_REFER,
            field("safe.chest", "Any chest signs?", one("no:No", "now:Yes, now"))),
        question(
            "SAF-09",
            "Sore skin",
            Question.AskedBy.VOLUNTEER_REFER,
            field("safe.skin", "What your skin is like", one("none:No sore skin", "broken:Open")),
            field("safe.skin.where", "Where is it?", where)),
        question(
            "SAF-13",
            "Limits",
            Question.AskedBy.CLINICIAN,
            field("safe.advice", "Any limits?", one("none:No", "limits:Yes, there are limits")),
            field("safe.advice.words", "The limits, in your own words", WORDS)));
  }

  private static List<Question> goals() {
    return List.of(
        asked("GOA-01", "Your goal", field("goal.main", "What would you like to do?", WORDS)),
        asked(
            "GOA-02",
            "What good looks like",
            field(
                "goal.good",
                "What good looks like",
                several("none:Nothing special", "relax:Relax", "compete:Compete")),
            field("goal.good.words", "In your own words", WORDS)),
        asked(
            "GOA-04",
            "Good session",
            field("goal.sessionMin", "Minutes of a good session", minutes())),
        asked("END-01", "Minutes before a rest", field("end.minutes", "How long?", minutes())),
        asked(
            "END-02",
            "Pain now",
            field("pain.now", "How strong?", new FactType.Amount(0, 10, 0, "{score}"))));
  }

  private static List<Question> fingers() {
    FactType press = one("0:Nothing yet", "2:A light key", "4:A trigger");
    List<Field> grid = new ArrayList<>();
    for (String side : List.of("L:Left", "R:Right")) {
      for (String digit : List.of("T:thumb", "I:index finger", "M:middle finger")) {
        String fact = "digit." + code(side) + ".press." + code(digit);
        grid.add(field(fact, text(side) + " " + text(digit), press));
      }
    }
    return List.of(
        question("DIG-03", "Press force", Question.AskedBy.VOLUNTEER, grid.toArray(Field[]::new)),
        asked(
            "DIG-04",
            "Side cells reached",
            field(
                "digit.L.panel.T",
                "Left thumb",
                several("A1:A1: upper row", "B2:B2: middle row"))));
  }

  private static List<Question> place() {
    FactType kind = one("STA:Story action", "CIT:City building", "none:No further game");
    FactType mode = one("solo:Alone", "online:Online, for fun");
    return List.of(
        asked(
            "ENV-02",
            "Sitting",
            field("seat.trunk", "Your body", one("steady:Steady", "leans:It leans"))),
        asked(
            "VOI-05",
            "Noise and chat",
            field("env.noise", "Noise in the room", one("quiet:Quiet", "loud:Loud")),
            field("voice.chat", "Do you use voice chat?", new FactType.YesNo())),
        asked(
            "COG-02",
            "Jobs to start with",
            field("cog.jobs", "How many?", one("3:About 3", "6:About 6"))),
        asked(
            "GAM-01",
            "Your games",
            field("games.1.genre", "First game: kind", kind),
            field("games.1.name", "First game: your name for it", WORDS),
            field("games.2.genre", "Second game: kind", kind)),
        asked("GAM-02", "How you play", field("games.1.mode", "First game: mode", mode)));
  }

  private static FactType minutes() {
    return new FactType.Amount(0, 240, 0, "min");
  }

  private static Section section(String id, String title, List<Question> questions) {
    return new Section(id, title, questions);
  }

  private static Question asked(String id, String name, Field... fields) {
    return question(id, name, Question.AskedBy.PLAYER, fields);
  }

  private static Question question(String id, String name, Question.AskedBy by, Field... fields) {
    return new Question(
        id,
        id.substring(0, 3),
        fields[0].label(),
        Optional.of(name),
        Optional.empty(),
        Optional.empty(),
        "",
        "",
        "",
        "",
        List.of(),
        Question.Route.CORE,
        by,
        id.equals("SAF-03") ? 3 : 0,
        List.of(fields),
        SmallBank.HERE);
  }

  private static Field field(String fact, String label, FactType type) {
    return new Field(
        fact,
        label,
        Optional.empty(),
        Optional.empty(),
        type,
        false,
        List.of(),
        List.of(),
        Optional.empty(),
        false,
        List.of(),
        SmallBank.HERE);
  }

  private static FactType one(String... options) {
    return new FactType.OneOf(options(options));
  }

  private static FactType several(String... options) {
    return new FactType.SeveralOf(options(options));
  }

  private static List<Option> options(String... options) {
    List<Option> list = new ArrayList<>();
    for (String option : options) {
      list.add(
          new Option(
              "http://small.invalid",
              code(option),
              text(option),
              OptionalDouble.empty(),
              code(option).equals("none"),
              SmallBank.HERE));
    }
    return list;
  }

  private static String code(String pair) {
    return pair.substring(0, pair.indexOf(':'));
  }

  private static String text(String pair) {
    return pair.substring(pair.indexOf(':') + 1);
  }
}
