package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Rule;
import closehand.bank.Term;
import closehand.interview.Value;
import closehand.interview.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The parts of a bank in words, by name: what is printed and what two banks are compared by. */
final class BankWords {
  private final Bank bank;
  private final Glyphs glyphs;
  private final ConditionWords conditions;

  BankWords(Bank bank, Glyphs glyphs) {
    this.bank = bank;
    this.glyphs = glyphs;
    this.conditions = new ConditionWords(bank, glyphs);
  }

  /** A question with why it is asked. */
  static String question(Question question) {
    String who =
        switch (question.askedBy()) {
          case PLAYER -> "the player may fill it in alone";
          case VOLUNTEER -> "a volunteer may ask";
          case VOLUNTEER_REFER ->
              "a volunteer may ask, and any answer but the all-clear goes to a clinician";
          case CLINICIAN -> "only a clinician may ask";
        };
    return question.id()
        + ". "
        + question.text()
        + " Why: "
        + Phrases.sentence(question.why())
        + " ("
        + question.route().code()
        + "; "
        + who
        + "; safety weight "
        + question.safetyWeight()
        + ")";
  }

  /** What can be answered. */
  static String field(Question question, Field field) {
    String label = field.label().equals(question.text()) ? "" : Phrases.bare(field.label()) + ": ";
    String when = field.conditions().isEmpty() ? "" : " Asked only after certain answers.";
    return label + answers(field.type()) + " [" + field.fact() + "]" + when;
  }

  private static String answers(FactType type) {
    if (type instanceof FactType.YesNo) {
      return "yes or no.";
    }
    if (type instanceof FactType.Amount amount) {
      return "a number from "
          + Wording.number(amount.minimum())
          + " to "
          + Wording.of(type, new Value.Number(amount.maximum()))
          + ".";
    }
    List<String> options = type.choices().stream().map(Option::display).toList();
    if (options.isEmpty()) {
      return "own words.";
    }
    String lead = type instanceof FactType.SeveralOf ? "any of: " : "one of: ";
    return lead + String.join("; ", options) + ".";
  }

  /** Every question by its id, with its fields. */
  Map<String, String> questions() {
    Map<String, String> words = new LinkedHashMap<>();
    for (Question question : bank.questionnaire().questions()) {
      StringBuilder text = new StringBuilder(question(question));
      question.fields().forEach(f -> text.append(' ').append(field(question, f)));
      words.put("Question " + question.id(), text.toString());
    }
    return words;
  }

  /** Every term by its id. */
  Map<String, String> terms() {
    Map<String, String> words = new LinkedHashMap<>();
    for (Term term : bank.terms()) {
      String text = glyphs.quoted(Phrases.bare(term.text()));
      if (term instanceof Term.Derived derived) {
        words.put(term.id(), text + " when " + conditions.of(derived.when()) + ".");
      } else if (term instanceof Term.Computed computed) {
        List<String> of = computed.of().stream().map(conditions::name).toList();
        String how =
            switch (computed.computation()) {
              case MAXIMUM -> "the largest of ";
              case MINIMUM -> "the smallest of ";
              case COUNT -> "how many are picked of ";
              case DIFFERENCE -> "the first less the second of ";
            };
        words.put(term.id(), text + " is " + how + Phrases.and(of) + ".");
      }
    }
    return words;
  }

  /** Every rule by its key. */
  Map<String, String> rules() {
    RuleWords sentences = new RuleWords(bank, glyphs);
    Map<String, String> words = new LinkedHashMap<>();
    for (Rule rule : bank.rules()) {
      words.put("Rule " + rule.key(), rule.title() + ". " + sentences.of(rule));
    }
    return words;
  }

  /** Every caution by its code. */
  Map<String, String> cautions() {
    Map<String, String> words = new LinkedHashMap<>();
    for (Caution caution : bank.cautions()) {
      String classes =
          String.join(" or ", caution.classes().stream().map(CautionClass::code).toList());
      words.put(
          caution.code(),
          Phrases.sentence(caution.title())
              + " ("
              + classes
              + (caution.lowerable() ? "; a clinician may lower it" : "; cannot be lowered")
              + ") "
              + caution.message()
              + " "
              + String.join(" ", caution.actions())
              + (caution.brief().isEmpty() ? "" : " In few words: " + caution.brief()));
    }
    return words;
  }

  /** Every approach by its id. */
  Map<String, String> approaches() {
    Map<String, String> words = new LinkedHashMap<>();
    bank.approaches()
        .forEach(
            a ->
                words.put(
                    "Approach " + a.id(),
                    Phrases.sentence(a.words().name())
                        + " "
                        + a.words().summary()
                        + " Cost class "
                        + String.join(", ", a.costClasses())
                        + "; "
                        + Phrases.count(a.inputs().size(), "input")
                        + "."));
    return words;
  }
}
