package closehand.bank;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks what HL7's own validator lets pass: conditions that cannot work, doubled options, texts
 * that are too long.
 */
final class QuestionnaireCheck {
  /** Longest question text, in characters; longer ones cannot be taken in when heard. */
  private static final int LONGEST_TEXT = 240;

  /** Most answers one question can have: rules keep them as the bits of a long. */
  private static final int MOST_OPTIONS = 63;

  private final Questionnaire questionnaire;
  private final Doubt doubt;
  private final List<Problem> problems;
  private final Map<String, Field> before = new LinkedHashMap<>();
  private final EnableWhenCheck conditions;

  QuestionnaireCheck(Questionnaire questionnaire, Doubt doubt, List<Problem> problems) {
    this.questionnaire = questionnaire;
    this.doubt = doubt;
    this.problems = problems;
    this.conditions =
        new EnableWhenCheck(
            before,
            questionnaire.fieldsByFact().keySet(),
            questionnaire.groupTexts().keySet(),
            doubt,
            problems);
  }

  void check() {
    Set<String> ids = new HashSet<>();
    for (Question question : questionnaire.questions()) {
      if (!question.id().isEmpty() && !ids.add(question.id())) {
        report(
            question.where().child("prefix"),
            "duplicate-id",
            "The question id \"" + question.id() + "\" is used twice.",
            "Choose another prefix.");
      }
      length(question.text(), question.where().child("text"));
      question.helpConditions().forEach(conditions::check);
      question.fields().forEach(this::field);
    }
  }

  private void field(Field field) {
    if (field.fact().equals(FactKinds.CLEARED) || field.fact().startsWith(FactKinds.GAME)) {
      report(
          field.where().child("linkId"),
          "duplicate-id",
          "\"" + field.fact() + "\" is a name of the program's own.",
          "Choose another.");
    }
    length(field.label(), field.where().child("text"));
    options(field);
    field.conditions().forEach(conditions::check);
    before.putIfAbsent(field.fact(), field);
  }

  private void length(String text, Where where) {
    if (text.length() > LONGEST_TEXT) {
      report(
          where,
          "too-long",
          "The question is longer than " + LONGEST_TEXT + " characters.",
          "Say it shorter.");
    }
  }

  private void options(Field field) {
    List<Option> options = field.type().choices();
    boolean choice =
        field.type() instanceof FactType.OneOf || field.type() instanceof FactType.SeveralOf;
    if (choice && options.isEmpty() && !doubt.about(field.where())) {
      report(field.where(), "empty-list", "There is nothing to choose from.", "Add answerOption.");
    }
    if (options.size() > MOST_OPTIONS) {
      report(
          field.where().child("answerOption"),
          "too-long",
          "There are more than " + MOST_OPTIONS + " answers to choose from.",
          "Split the question.");
    }
    Set<String> codes = new HashSet<>();
    for (Option option : options) {
      if (!option.code().isEmpty() && !codes.add(option.code())) {
        report(
            option.where(),
            "duplicate-option",
            "The answer \"" + option.code() + "\" stands here twice.",
            "Remove one or choose another code.");
      }
      if (option.exclusive() && !(field.type() instanceof FactType.SeveralOf)) {
        report(
            option.where(),
            "wrong-type",
            "Only an answer among several can exclude the others.",
            "Remove the extension, or add \"repeats\": true to the question.");
      }
    }
    scale(field, options);
  }

  private void scale(Field field, List<Option> options) {
    long scaled = options.stream().filter(o -> o.ordinal().isPresent()).count();
    if (scaled != 0 && scaled != options.size() && !doubt.about(field.where())) {
      report(
          field.where(),
          "missing",
          "Some answers have a place on a scale and some have none.",
          "Give all or none an ordinalValue.");
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
