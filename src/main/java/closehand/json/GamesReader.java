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
  private final List<Problem> problems;

  GamesReader(List<Problem> problems) {
    this.problems = problems;
  }

  Optional<GameProfile> read(JsonValue value) {
    Optional<ObjectReading> reading = ObjectReading.of(value, problems);
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    ObjectReading in = reading.get();
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
    return Optional.of(new GameProfile(genre, title, note, settings, actions, basis, in.where()));
  }

  private GameProfile.Action action(ObjectReading in) {
    String id = in.text("id");
    String name = in.text("name");
    OptionalDouble perMinute = in.optionalNumber("perMinute");
    if (perMinute.isPresent() && perMinute.getAsDouble() < 0) {
      problems.add(
          Problem.error(
              in.where(),
              "out-of-range",
              "An action cannot happen less than 0 times a minute.",
              ""));
    }
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
    return ObjectReading.of(value, problems).map(ApproachesReader::span).orElse(NO_HOLD);
  }
}
