package closehand.json;

import closehand.bank.Approach;
import closehand.bank.GameProfile;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the profile of one kind of game. */
final class GamesReader {
  private static final int MOST_TIMES_A_MINUTE = 1000;

  private final List<Problem> problems;

  GamesReader(List<Problem> problems) {
    this.problems = problems;
  }

  GameProfile read(ObjectReading in) {
    String genre = in.text("genre");
    String title = in.text("title");
    String note = in.text("note");
    List<String> settings = in.texts("settings");
    List<String> basis = in.texts("basis");
    List<GameProfile.Action> actions = new ArrayList<>();
    for (JsonValue action : in.list("actions")) {
      ObjectReading.of(action, problems).ifPresent(a -> actions.add(action(a)));
    }
    in.finish();
    return new GameProfile(genre, title, note, settings, actions, basis, in.where());
  }

  private GameProfile.Action action(ObjectReading in) {
    String id = in.text("id");
    String name = in.text("name");
    OptionalDouble perMinute = in.optionalNumber("perMinute", 0, MOST_TIMES_A_MINUTE);
    Optional<JsonValue> hold = in.optional("holdSeconds");
    boolean continuous =
        hold.orElse(null) instanceof JsonValue.Str word && word.value().equals("continuous");
    GameProfile.Action action =
        new GameProfile.Action(
            id,
            name,
            perMinute,
            in.texts("style"),
            continuous ? NO_HOLD : hold.map(this::span).orElse(NO_HOLD),
            continuous,
            in.whole("urgency", 0, 3),
            in.whole("importance", 0, 3),
            in.optionalTexts("coPress"),
            in.optionalTexts("options"),
            in.where());
    in.finish();
    return action;
  }

  private static final Approach.Span NO_HOLD = new Approach.Span(0, 0, "");

  private Approach.Span span(JsonValue value) {
    if (value instanceof JsonValue.Obj object) {
      return ApproachesReader.span(new ObjectReading(object, problems));
    }
    ObjectReading.wrongType(value, "an object with min and max, or \"continuous\"", problems);
    return NO_HOLD;
  }
}
