package closehand.json;

import closehand.bank.GameProfile.Action;
import closehand.plan.PlanAsk;
import closehand.plan.PlanChanges;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/**
 * Writes what a player changed by hand as one JSON object, for the room of plans in a case. The
 * actions stand in the form of the game profiles and of answers files.
 */
public final class ChangesWriter {
  static final String KIND = "changes";

  private ChangesWriter() {}

  /** The object, ending in a line break. */
  public static String write(PlanChanges changes) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeStringField("kind", KIND);
          out.writeArrayFieldStart("games");
          for (Map.Entry<Integer, PlanChanges.OfGame> game : changes.games().entrySet()) {
            game(game.getKey() - 1, game.getValue(), out);
          }
          out.writeEndArray();
          out.writeEndObject();
        });
  }

  private static void game(int game, PlanChanges.OfGame changes, JsonGenerator out)
      throws IOException {
    out.writeStartObject();
    out.writeNumberField("game", game);
    out.writeStringField("genre", changes.genre());
    out.writeArrayFieldStart("actions");
    for (Action action : changes.actions()) {
      action(action, out);
    }
    for (String id : changes.removed().stream().sorted().toList()) {
      out.writeStartObject();
      out.writeStringField("id", id);
      out.writeBooleanField("drop", true);
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeArrayFieldStart("wishes");
    for (PlanAsk.Wish wish : changes.wishes()) {
      out.writeStartObject();
      out.writeStringField("action", wish.action());
      out.writeStringField("input", wish.input());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void action(Action action, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("id", action.id());
    out.writeStringField("name", action.name());
    if (action.perMinute().isPresent()) {
      out.writeNumberField("perMinute", action.perMinute().getAsDouble());
    }
    texts("style", action.style(), out);
    if (action.continuous()) {
      out.writeStringField("holdSeconds", "continuous");
    } else {
      out.writeObjectFieldStart("holdSeconds");
      out.writeNumberField("min", action.holdSeconds().minimum());
      out.writeNumberField("max", action.holdSeconds().maximum());
      out.writeEndObject();
    }
    out.writeNumberField("urgency", action.urgency());
    out.writeNumberField("importance", action.importance());
    texts("coPress", action.pressedWith(), out);
    texts("options", action.options(), out);
    out.writeEndObject();
  }

  private static void texts(String name, List<String> values, JsonGenerator out)
      throws IOException {
    out.writeFieldName(name);
    out.writeArray(values.toArray(new String[0]), 0, values.size());
  }
}
