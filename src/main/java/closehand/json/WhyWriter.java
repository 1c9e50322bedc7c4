package closehand.json;

import closehand.interview.Answers;
import closehand.rules.Advice;
import closehand.rules.Standing;
import closehand.rules.Warning;
import closehand.rules.why.Explanation;
import closehand.rules.why.Ground;
import closehand.rules.why.Lead;
import closehand.rules.why.Part;
import closehand.rules.why.Settled;
import closehand.rules.why.Turns;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes why something stands as it does as one JSON object for other programs. */
public final class WhyWriter {
  private WhyWriter() {}

  /**
   * The whole object, ending in a line break.
   *
   * @param answers the answers it is about
   * @param turns what would change what leads, if that is to be written
   * @param settled which answers decide it, if they do
   */
  public static String write(
      Explanation why, Answers answers, Optional<Turns> turns, Optional<Settled> settled) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeStringField("subject", why.subject().id());
          if (why.standing().isPresent()) {
            standing(why.standing().get(), out);
          }
          out.writeBooleanField("withheld", why.withheld());
          lead(why.lead(), out);
          group("fired", why.in(Ground.State.FIRED), out);
          group("heldBack", why.in(Ground.State.HELD_BACK), out);
          group("waiting", why.in(Ground.State.WAITING), out);
          group("notFired", why.in(Ground.State.NOT_FIRED), out);
          if (turns.isPresent()) {
            new TurnWriter(out, answers).write(turns.get(), why.subject().id());
          }
          if (settled.isPresent()) {
            out.writeObjectFieldStart("settledBy");
            out.writeStringField("leader", settled.get().leader());
            texts("answers", settled.get().telling(), out);
            texts("warningSigns", settled.get().warningSigns(), out);
            out.writeEndObject();
          }
          out.writeEndObject();
        });
  }

  /** Where nothing leads and nothing was named: which stops and open questions are behind it. */
  public static String nothingLeads(Advice advice) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeNullField("subject");
          out.writeNullField("leader");
          out.writeBooleanField("firm", advice.firm());
          out.writeBooleanField("withheld", advice.withheld());
          warnings(advice.stops(), advice.notCleared(), out);
          texts(
              "undecided",
              advice.with(Standing.Status.UNDECIDED).stream().map(s -> s.approach().id()).toList(),
              out);
          out.writeEndObject();
        });
  }

  /** What leads, whether firmly, and which open answers stand in the way of that. */
  private static void lead(Lead lead, JsonGenerator out) throws IOException {
    if (lead.leader().isPresent()) {
      out.writeStringField("leader", lead.leader().get());
    } else {
      out.writeNullField("leader");
    }
    out.writeBooleanField("firm", lead.firm());
    texts("couldOverturn", lead.couldOverturn(), out);
    warnings(lead.stops(), lead.notCleared(), out);
  }

  private static void warnings(List<Warning> stops, List<Warning> notCleared, JsonGenerator out)
      throws IOException {
    texts("stops", stops.stream().map(w -> w.caution().code()).toList(), out);
    out.writeArrayFieldStart("notCleared");
    for (Warning warning : notCleared) {
      out.writeStartObject();
      out.writeStringField("code", warning.caution().code());
      out.writeStringField("class", warning.cautionClass().code());
      texts("waitsFor", warning.waitsFor(), out);
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void standing(Standing standing, JsonGenerator out) throws IOException {
    out.writeStringField("status", word(standing.status()));
    out.writeFieldName("points");
    out.writeArray(new int[] {standing.lowest(), standing.highest()}, 0, 2);
  }

  /** An enum's name as other programs write such words: {@code ruled-out}. */
  static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static void group(String name, List<Ground> grounds, JsonGenerator out)
      throws IOException {
    out.writeArrayFieldStart(name);
    for (Ground ground : grounds) {
      out.writeStartObject();
      out.writeStringField("rule", ground.rule().key());
      texts("answers", ground.answersUsed(), out);
      texts("waitsFor", ground.finding().waitsFor(), out);
      if (ground.hindrance().isPresent()) {
        hindrance(ground.hindrance().get(), out);
      }
      texts("basis", ground.rule().basis(), out);
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  /** The place of the part in the bank's files says which part it is. */
  private static void hindrance(Part part, JsonGenerator out) throws IOException {
    out.writeObjectFieldStart("hindrance");
    out.writeStringField("file", part.condition().where().file());
    out.writeStringField("at", part.condition().where().pointer());
    out.writeStringField("outcome", word(part.outcome()));
    texts("answers", part.facts(), out);
    texts("waitsFor", part.waitsFor(), out);
    out.writeEndObject();
  }

  static void texts(String name, List<String> values, JsonGenerator out) throws IOException {
    out.writeFieldName(name);
    out.writeArray(values.toArray(new String[0]), 0, values.size());
  }
}
