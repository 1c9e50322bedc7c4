package closehand.json;

import closehand.plan.Mixes;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** Writes comparisons of controls as one JSON object for other programs. */
public final class MixWriter {
  private MixWriter() {}

  /** The whole object with one comparison a game, ending in a line break. */
  public static String write(List<Mixes.Comparison> games) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeArrayFieldStart("comparisons");
          for (Mixes.Comparison game : games) {
            game(out, game);
          }
          out.writeEndArray();
          out.writeEndObject();
        });
  }

  private static void game(JsonGenerator out, Mixes.Comparison game) throws IOException {
    out.writeStartObject();
    out.writeNumberField("game", game.best().plan().game());
    texts(out, "best", game.best().plan().approaches());
    out.writeNumberField("cost", game.best().plan().cost());
    mixes(out, "alone", game.alone());
    mixes(out, "together", game.together());
    out.writeArrayFieldStart("adds");
    for (Mixes.Added added : game.added()) {
      out.writeStartObject();
      out.writeStringField("approach", added.approach());
      texts(out, "bringsIn", added.broughtIn());
      texts(out, "takesOff", added.movedOff());
      out.writeNumberField("costWith", added.costWith());
      out.writeNumberField("costWithout", added.costWithout());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void mixes(JsonGenerator out, String name, List<Mixes.Mix> mixes)
      throws IOException {
    out.writeArrayFieldStart(name);
    for (Mixes.Mix mix : mixes) {
      out.writeStartObject();
      texts(out, "approaches", mix.approaches());
      out.writeNumberField("points", mix.points());
      out.writeNumberField("neededPlaced", mix.mustsPlaced());
      out.writeNumberField("needed", mix.musts());
      out.writeNumberField("cost", mix.cost());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void texts(JsonGenerator out, String name, List<String> values)
      throws IOException {
    out.writeFieldName(name);
    out.writeArray(values.toArray(new String[0]), 0, values.size());
  }
}
