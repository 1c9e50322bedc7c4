package closehand.json;

import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.rules.Change.To;
import closehand.rules.Variation;
import closehand.rules.Verdict;
import closehand.rules.why.Turns;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** Writes which changed answers would turn the advice: fact, from, to, leader before and after. */
final class TurnWriter {
  private final JsonGenerator out;
  private final Answers answers;

  TurnWriter(JsonGenerator out, Answers answers) {
    this.out = out;
    this.answers = answers;
  }

  /**
   * Writes the member {@code changes}: every single change after which something else leads; where
   * none brings or takes the first place of this approach, pairs that do.
   */
  void write(Turns turns, String approach) throws IOException {
    list("changes", turns.singles(), turns.now());
    boolean leads = turns.now().leader().filter(approach::equals).isPresent();
    boolean any =
        leads
            ? turns.singles().stream().anyMatch(v -> !v.then().withheld())
            : !turns.bringingForward(approach).isEmpty();
    if (!any) {
      list("pairs", leads ? turns.pairs() : turns.pairsBringingForward(approach), turns.now());
      out.writeBooleanField("everyPairTried", turns.everyPairTried());
    }
  }

  private void list(String name, List<Variation> variations, Verdict now) throws IOException {
    out.writeArrayFieldStart(name);
    for (Variation variation : variations) {
      out.writeStartObject();
      out.writeArrayFieldStart("answers");
      for (Variation.Step step : variation.steps()) {
        out.writeStartObject();
        out.writeStringField("fact", step.fact());
        out.writeFieldName("from");
        from(step.fact());
        out.writeFieldName("to");
        to(step.to());
        out.writeNumberField("stepsAway", step.cellsAway());
        out.writeEndObject();
      }
      out.writeEndArray();
      out.writeBooleanField("uncertain", variation.uncertain());
      leader("before", now);
      leader("after", variation.then());
      out.writeBooleanField("withheld", variation.then().withheld());
      out.writeBooleanField("firm", variation.then().firm());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void leader(String name, Verdict verdict) throws IOException {
    out.writeFieldName(name);
    if (verdict.leader().isPresent()) {
      out.writeString(verdict.leader().get());
    } else {
      out.writeNull();
    }
  }

  private void from(String fact) throws IOException {
    Answer answer = answers.answer(fact).orElse(new Answer.Absent(Answer.Reason.UNKNOWN));
    if (answer instanceof Answer.Given given) {
      value(given.value());
    } else {
      out.writeStartObject();
      out.writeStringField("absent", ((Answer.Absent) answer).reason().code());
      out.writeEndObject();
    }
  }

  private void value(Value value) throws IOException {
    if (value instanceof Value.Flag flag) {
      out.writeBoolean(flag.value());
    } else if (value instanceof Value.Number number) {
      out.writeNumber(number.value());
    } else if (value instanceof Value.Code code) {
      out.writeString(code.code());
    } else if (value instanceof Value.Text text) {
      out.writeString(text.words());
    } else {
      List<String> all =
          value instanceof Value.Codes codes ? codes.codes() : ((Value.Texts) value).words();
      out.writeArray(all.toArray(new String[0]), 0, all.size());
    }
  }

  private void to(To to) throws IOException {
    if (to instanceof To.Flag flag) {
      out.writeBoolean(flag.value());
    } else if (to instanceof To.Option option) {
      out.writeString(option.code());
    } else if (to instanceof To.Between range) {
      out.writeArray(new double[] {range.least(), range.greatest()}, 0, 2);
    } else {
      out.writeStartObject();
      if (to instanceof To.Counted counted) {
        out.writeNumberField("atLeast", counted.least());
        out.writeNumberField("atMost", counted.greatest());
      } else if (to instanceof To.Picked picked) {
        out.writeStringField(picked.picked() ? "with" : "without", picked.code());
      }
      out.writeEndObject();
    }
  }
}
