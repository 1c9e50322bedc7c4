package closehand.report;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Questionnaire;
import closehand.interview.Answers;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.rules.Finding;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The answers as the pages need them. */
final class Facts {
  private static final String WHERE = ".where";

  private final Questionnaire questionnaire;
  private final Map<String, Field> fields;
  private final Answers answers;

  Facts(Questionnaire questionnaire, Answers answers) {
    this.questionnaire = questionnaire;
    this.fields = questionnaire.fieldsByFact();
    this.answers = answers;
  }

  /** The number given, if one was. */
  OptionalDouble number(String fact) {
    return answers.value(fact).orElse(null) instanceof Value.Number number
        ? OptionalDouble.of(number.value())
        : OptionalDouble.empty();
  }

  /** Whether this option was picked. */
  boolean is(String fact, String code) {
    return answers.value(fact).orElse(null) instanceof Value.Code given
        && given.code().equals(code);
  }

  /** The words given, if there are any. */
  Optional<String> text(String fact) {
    return answers
        .value(fact)
        .filter(v -> v instanceof Value.Text)
        .map(v -> ((Value.Text) v).words().strip())
        .filter(w -> !w.isEmpty());
  }

  /** The answer in words, where a value was given. */
  Optional<String> words(String fact) {
    Field field = fields.get(fact);
    return field == null
        ? Optional.empty()
        : answers.value(fact).map(v -> Wording.of(field.type(), v));
  }

  /** The codes of the options picked; empty where none were. */
  List<String> codes(String fact) {
    return answers.value(fact).orElse(null) instanceof Value.Codes codes
        ? List.copyOf(codes.codes())
        : List.of();
  }

  /** The words of the options picked, without "none of these". */
  List<String> picked(String fact) {
    Field field = fields.get(fact);
    if (field == null || !(answers.value(fact).orElse(null) instanceof Value.Codes codes)) {
      return List.of();
    }
    List<String> words = new ArrayList<>();
    for (String code : codes.codes()) {
      FactType type = field.type();
      type.option(code).filter(o -> !o.exclusive()).map(Option::display).ifPresent(words::add);
    }
    return words;
  }

  /**
   * The parts of the body that a stop is about: what was picked in the questions behind it; empty
   * where they have nothing to pick several of.
   */
  List<String> places(Warning stop) {
    Set<String> places = new LinkedHashSet<>();
    if (stop.cautionClass() == CautionClass.STOP_PART) {
      for (Finding finding : stop.because()) {
        for (String fact : finding.supportedBy()) {
          questionnaire
              .questionOf(fact)
              .ifPresent(q -> q.fields().forEach(f -> places.addAll(picked(f.fact()))));
        }
      }
    }
    return List.copyOf(places);
  }

  /** Whether a question behind this stop asks where, so that a place can be missing. */
  boolean asksPlace(Warning stop) {
    return stop.cautionClass() == CautionClass.STOP_PART
        && stop.because().stream()
            .flatMap(f -> f.supportedBy().stream())
            .flatMap(fact -> questionnaire.questionOf(fact).stream())
            .flatMap(q -> q.fields().stream())
            .anyMatch(f -> f.fact().endsWith(WHERE));
  }

  /** The code of the kind of game in this place, from 1, if there is a game. */
  Optional<String> genre(Bank bank, int slot) {
    return answers.value("games." + slot + ".genre").orElse(null) instanceof Value.Code code
        ? Optional.of(code.code()).filter(g -> bank.game(g).isPresent())
        : Optional.empty();
  }
}
