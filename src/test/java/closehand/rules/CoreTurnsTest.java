package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** On the core bank every foretold change comes true, and a sample of other answers turns none. */
class CoreTurnsTest {
  private static final RuleBook BOOK = RuleBook.of(GoldAnswers.bank());
  private static final Map<String, Answers> PLAYERS = GoldAnswers.of(BOOK.bank());

  private static Field field(String fact) {
    return Optional.ofNullable(BOOK.bank().questionnaire().fieldsByFact().get(fact)).orElseThrow();
  }

  @Test
  void everyForetoldChangeComesTrue() {
    int replayed = 0;
    for (Answers now : PLAYERS.values()) {
      for (Variation variation : Variations.of(BOOK, now).singles()) {
        Variation.Step step = variation.steps().get(0);
        Value before = now.value(step.fact()).orElse(new Value.Flag(false));
        for (Value value : values(now, step)) {
          if (OtherValues.means(step.to(), value, before)) {
            Verdict then = BOOK.verdict(OtherValues.with(now, step.fact(), value));
            assertEquals(variation.then(), then, step + " " + value);
            replayed++;
          }
        }
      }
    }
    assertTrue(replayed > 150, "replayed: " + replayed);
  }

  private static List<Value> values(Answers now, Variation.Step step) {
    FactType type = field(step.fact()).type();
    return type instanceof FactType.SeveralOf || now.value(step.fact()).isPresent()
        ? OtherValues.of(BOOK, now, step.fact())
        : type.choices().stream().<Value>map(o -> new Value.Code(o.code())).toList();
  }

  @Test
  void aSampleOfOtherAnswersTurnsNothing() {
    Dice dice = new Dice(7);
    int tried = 0;
    for (Answers now : PLAYERS.values()) {
      Verdict before = BOOK.verdict(now);
      List<Variation> singles = Variations.of(BOOK, now).singles();
      List<String> facts = List.copyOf(now.byFact().keySet());
      for (int i = 0; i < 150; i++) {
        String fact = dice.of(facts);
        Optional<Value> given = now.value(fact);
        boolean words =
            field(fact).type() instanceof FactType.Words
                || field(fact).type() instanceof FactType.WordList;
        if (given.isPresent() && !words) {
          Value value = dice.of(OtherValues.of(BOOK, now, fact));
          boolean foretold =
              singles.stream()
                  .map(v -> v.steps().get(0))
                  .anyMatch(
                      s -> s.fact().equals(fact) && OtherValues.means(s.to(), value, given.get()));
          boolean turns = !BOOK.verdict(OtherValues.with(now, fact, value)).sameLead(before);
          assertEquals(foretold, turns, fact + " " + value);
          tried++;
        }
      }
    }
    assertTrue(tried > 500, "tried: " + tried);
  }
}
