package closehand.json;

import closehand.measure.statistics.Verdict;
import closehand.measure.statistics.VerdictWords;
import closehand.measure.trial.SideBySide;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;

/** Writes two set-ups side by side as one JSON object for other programs. */
public final class ComparisonWriter {
  private final SideBySide both;
  private final JsonGenerator out;

  private ComparisonWriter(SideBySide both, JsonGenerator out) {
    this.both = both;
    this.out = out;
  }

  /** The whole object, ending in a line break. */
  public static String write(SideBySide both) {
    return PrettyJson.write(out -> new ComparisonWriter(both, out).all());
  }

  private void all() throws IOException {
    out.writeStartObject();
    side("first", both.first());
    side("second", both.second());
    out.writeArrayFieldStart("actions");
    for (String action : both.actions()) {
      out.writeString(action);
    }
    out.writeEndArray();
    verdict("worked", both.success());
    verdict("painRise", both.pain());
    verdict("effort", both.effort());
    verdict("satisfaction", both.satisfaction());
    out.writeArrayFieldStart("warnings");
    for (SideBySide.Warning warning : both.warnings()) {
      out.writeString(code(warning));
    }
    out.writeEndArray();
    out.writeObjectFieldStart("choice");
    if (both.choice().side().isPresent()) {
      out.writeStringField("side", code(both.choice().side().get()));
    }
    out.writeStringField("why", code(both.choice().why()));
    out.writeEndObject();
    out.writeStringField("ground", VerdictWords.GROUND);
    out.writeEndObject();
  }

  private void side(String name, SideBySide.Row row) throws IOException {
    out.writeObjectFieldStart(name);
    out.writeStringField("setUp", row.setUp().name());
    out.writeNumberField("trials", row.trials().size());
    out.writeNumberField("stopped", row.stopped());
    out.writeEndObject();
  }

  private void verdict(String name, Verdict verdict) throws IOException {
    out.writeObjectFieldStart(name);
    out.writeStringField("verdict", code(verdict));
    if (verdict.ahead().isPresent()) {
      out.writeStringField("ahead", code(verdict.ahead().get()));
    }
    out.writeBooleanField("mayBePractice", verdict.mayBePractice());
    out.writeStringField(
        "words",
        VerdictWords.of(verdict, both.first().setUp().name(), both.second().setUp().name()));
    if (verdict.figures().isPresent()) {
      Verdict.Difference figures = verdict.figures().get();
      out.writeNumberField("first", figures.first());
      out.writeNumberField("second", figures.second());
      out.writeNumberField("wobble", figures.wobble());
      out.writeNumberField("chance", figures.chance().twoSided());
      out.writeBooleanField("exact", figures.chance().exact());
      out.writeNumberField("chanceByRanks", figures.ranks().chance().twoSided());
      out.writeNumberField("wonShare", figures.overlap().wonShare());
      out.writeNumberField("tauLessTrend", figures.overlap().tauLessTrend());
    }
    out.writeEndObject();
  }

  private static String code(Verdict verdict) {
    if (verdict instanceof Verdict.TooFew) {
      return "too-few";
    }
    if (verdict instanceof Verdict.WithinWobble) {
      return "within-wobble";
    }
    return verdict instanceof Verdict.LooksBetter ? "looks-better" : "better";
  }

  private static String code(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
