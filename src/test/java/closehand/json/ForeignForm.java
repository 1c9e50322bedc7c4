package closehand.json;

import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import closehand.bank.Where;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hl7.fhir.r4.model.BooleanType;
import org.hl7.fhir.r4.model.Coding;
import org.hl7.fhir.r4.model.DecimalType;
import org.hl7.fhir.r4.model.IntegerType;
import org.hl7.fhir.r4.model.Questionnaire.QuestionnaireItemComponent;
import org.hl7.fhir.r4.model.Questionnaire.QuestionnaireItemEnableWhenComponent;
import org.hl7.fhir.r4.model.Questionnaire.QuestionnaireItemType;
import org.hl7.fhir.r4.model.StringType;
import org.hl7.fhir.r4.model.Type;

/**
 * A form that somebody else made, brought to what our banks hold without touching when a question
 * applies.
 *
 * <p>Every question and group becomes required, since the validator notices a question missed only
 * where one is wanted. Questions under a question move into a group after it with the same
 * condition; what may be repeated is asked once; kinds of answer that banks do not have become
 * words; lists of values held elsewhere become the codes that conditions name, and one more.
 */
final class ForeignForm {
  private static final String SYSTEM = "http://closehand.invalid/foreign-answers";
  private static final Where HERE = Where.file("form");

  private final Map<String, QuestionnaireItemComponent> items = new HashMap<>();
  private final List<Field> fields = new ArrayList<>();
  private final Map<String, String> groupTexts = new LinkedHashMap<>();

  private ForeignForm() {}

  /** Something in a form that banks and their conditions cannot say. */
  static final class NotWalkable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotWalkable(String what) {
      super(what);
    }
  }

  /** Brings the form itself to our shape, for the validator to judge by. */
  static void reshape(org.hl7.fhir.r4.model.Questionnaire form, String url) {
    ForeignForm shape = new ForeignForm();
    form.setUrl(url);
    form.setVersion("1");
    form.setMeta(null);
    form.setText(null);
    form.getExtension().clear();
    form.getModifierExtension().clear();
    form.getContained().clear();
    form.getCode().clear();
    form.getDerivedFrom().clear();
    shape.learn(form.getItem());
    form.setItem(shape.reshaped(form.getItem()));
  }

  private void learn(List<QuestionnaireItemComponent> some) {
    for (QuestionnaireItemComponent item : some) {
      if (!item.hasLinkId()) {
        throw new NotWalkable("an item without an id");
      }
      items.put(item.getLinkId(), item);
      learn(item.getItem());
    }
  }

  private List<QuestionnaireItemComponent> reshaped(List<QuestionnaireItemComponent> some) {
    List<QuestionnaireItemComponent> result = new ArrayList<>();
    for (QuestionnaireItemComponent item : some) {
      List<QuestionnaireItemComponent> inside = reshaped(item.getItem());
      if (item.getType() == QuestionnaireItemType.DISPLAY) {
        continue;
      }
      bare(item);
      if (item.getType() == QuestionnaireItemType.GROUP) {
        if (!inside.isEmpty()) {
          item.setItem(inside);
          item.setRequired(alwaysAsked(inside));
          result.add(item);
        }
        continue;
      }
      item.setItem(new ArrayList<>());
      question(item);
      result.add(item);
      if (!inside.isEmpty()) {
        result.add(after(item, inside));
      }
    }
    return result;
  }

  private void bare(QuestionnaireItemComponent item) {
    item.getExtension().clear();
    item.getModifierExtension().clear();
    item.getTextElement().getExtension().clear();
    item.getCode().clear();
    item.setDefinition(null);
    item.setPrefix(null);
    item.setRepeats(false);
    item.setRequired(true);
    item.setReadOnly(false);
    item.getInitial().clear();
    item.setMaxLengthElement(null);
    if (!item.hasText()) {
      item.setText("Text of " + item.getLinkId());
    }
    item.getEnableWhen().forEach(this::comparable);
  }

  /** Whether a group always has an answer; one that may be empty cannot be required. */
  private static boolean alwaysAsked(List<QuestionnaireItemComponent> inside) {
    return inside.stream().anyMatch(i -> i.getRequired() && !i.hasEnableWhen());
  }

  /** A group for what stood under a question, under the question's own condition. */
  private static QuestionnaireItemComponent after(
      QuestionnaireItemComponent question, List<QuestionnaireItemComponent> inside) {
    QuestionnaireItemComponent group = new QuestionnaireItemComponent();
    group.setLinkId(question.getLinkId() + ".under");
    group.setText("Under " + question.getLinkId());
    group.setType(QuestionnaireItemType.GROUP);
    group.setRequired(alwaysAsked(inside));
    question.getEnableWhen().forEach(w -> group.addEnableWhen(w.copy()));
    if (question.hasEnableBehavior()) {
      group.setEnableBehavior(question.getEnableBehavior());
    }
    group.setItem(inside);
    return group;
  }

  private void question(QuestionnaireItemComponent item) {
    switch (item.getType()) {
      case BOOLEAN, INTEGER, DECIMAL, STRING, TEXT -> {}
      case CHOICE, OPENCHOICE -> options(item);
      default -> item.setType(QuestionnaireItemType.STRING);
    }
    if (item.getType() != QuestionnaireItemType.CHOICE) {
      item.getAnswerOption().clear();
      item.setAnswerValueSet(null);
    }
  }

  private void options(QuestionnaireItemComponent item) {
    item.setType(QuestionnaireItemType.CHOICE);
    Set<String> codes = new LinkedHashSet<>();
    item.getAnswerOption().forEach(o -> codes.add(code(o.getValue())));
    codes.addAll(named(item.getLinkId()));
    codes.add("another-one");
    item.getAnswerOption().clear();
    item.setAnswerValueSet(null);
    codes.forEach(code -> item.addAnswerOption().setValue(new Coding(SYSTEM, code, "Say " + code)));
  }

  /** The codes that conditions on a question name. */
  private Set<String> named(String linkId) {
    Set<String> codes = new LinkedHashSet<>();
    for (QuestionnaireItemComponent item : items.values()) {
      for (QuestionnaireItemEnableWhenComponent when : item.getEnableWhen()) {
        boolean exists = when.getAnswer() instanceof BooleanType;
        if (when.getQuestion().equals(linkId) && !exists) {
          codes.add(code(when.getAnswer()));
        }
      }
    }
    return codes;
  }

  private static String code(Type value) {
    String raw = value instanceof Coding coding ? coding.getCode() : value.primitiveValue();
    if (raw == null) {
      throw new NotWalkable("an option without a code");
    }
    return raw.strip().replaceAll("\\s+", "-");
  }

  /** Gives a condition the kind of value that its question has now. */
  private void comparable(QuestionnaireItemEnableWhenComponent when) {
    QuestionnaireItemComponent asked = items.get(when.getQuestion());
    if (asked == null
        || asked.getType() == QuestionnaireItemType.GROUP
        || asked.getType() == QuestionnaireItemType.DISPLAY) {
      throw new NotWalkable("a condition on what is no question");
    }
    when.getExtension().clear();
    if (when.getOperator().toCode().equals("exists")) {
      return;
    }
    boolean choice =
        asked.getType() == QuestionnaireItemType.CHOICE
            || asked.getType() == QuestionnaireItemType.OPENCHOICE;
    Type answer = when.getAnswer();
    boolean ordered =
        !when.getOperator().toCode().equals("=") && !when.getOperator().toCode().equals("!=");
    boolean number =
        asked.getType() == QuestionnaireItemType.INTEGER
            || asked.getType() == QuestionnaireItemType.DECIMAL;
    if (ordered && !number) {
      throw new NotWalkable("an order of what has none");
    }
    if (number) {
      BigDecimal value = new BigDecimal(answer.primitiveValue());
      boolean whole = asked.getType() == QuestionnaireItemType.INTEGER;
      when.setAnswer(whole ? new IntegerType(value.intValueExact()) : new DecimalType(value));
    } else if (choice) {
      when.setAnswer(new Coding(SYSTEM, code(answer), null));
    } else if (answer instanceof Coding) {
      throw new NotWalkable("a code held against words");
    } else if (!(answer instanceof BooleanType)) {
      when.setAnswer(new StringType(String.valueOf(answer.primitiveValue())));
    }
  }

  /** The same form as our engine sees it; conditions pass through {@code change}. */
  static Questionnaire read(
      org.hl7.fhir.r4.model.Questionnaire form,
      java.util.function.UnaryOperator<List<EnableWhen>> change) {
    ForeignForm reading = new ForeignForm();
    reading.fields(form.getItem(), List.of(), List.of(), change);
    List<Question> questions = new ArrayList<>();
    for (Field field : reading.fields) {
      questions.add(
          new Question(
              field.fact(),
              "A",
              field.label(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              "",
              "",
              "",
              "",
              List.of(),
              Question.Route.CORE,
              Question.AskedBy.VOLUNTEER,
              0,
              List.of(field),
              HERE));
    }
    return new Questionnaire(
        form.getUrl(),
        form.getVersion(),
        "Form",
        List.of(new Section("A", "Form", questions)),
        reading.groupTexts);
  }

  private void fields(
      List<QuestionnaireItemComponent> some,
      List<String> groups,
      List<EnableWhen> around,
      java.util.function.UnaryOperator<List<EnableWhen>> change) {
    for (QuestionnaireItemComponent item : some) {
      List<EnableWhen> conditions = new ArrayList<>(around);
      if (item.hasEnableWhen()) {
        conditions.add(condition(item));
      }
      if (item.getType() == QuestionnaireItemType.GROUP) {
        List<String> deeper = new ArrayList<>(groups);
        deeper.add(item.getLinkId());
        groupTexts.put(item.getLinkId(), item.getText());
        fields(item.getItem(), deeper, conditions, change);
      } else {
        fields.add(
            new Field(
                item.getLinkId(),
                item.getText(),
                Optional.empty(),
                Optional.empty(),
                type(item),
                true,
                change.apply(conditions),
                groups,
                Optional.empty(),
                false,
                List.of(),
                HERE));
      }
    }
  }

  private static EnableWhen condition(QuestionnaireItemComponent item) {
    List<EnableWhen.Test> tests = new ArrayList<>();
    for (QuestionnaireItemEnableWhenComponent when : item.getEnableWhen()) {
      EnableWhen.Operator operator =
          List.of(EnableWhen.Operator.values()).stream()
              .filter(o -> o.code().equals(when.getOperator().toCode()))
              .findFirst()
              .orElseThrow();
      tests.add(new EnableWhen.Test(when.getQuestion(), operator, expected(when), HERE));
    }
    boolean all = !item.hasEnableBehavior() || item.getEnableBehavior().toCode().equals("all");
    return new EnableWhen(tests, all);
  }

  private static EnableWhen.Expected expected(QuestionnaireItemEnableWhenComponent when) {
    Type answer = when.getAnswer();
    if (answer instanceof BooleanType flag) {
      return new EnableWhen.Expected.Flag(flag.booleanValue());
    }
    if (answer instanceof Coding coding) {
      return new EnableWhen.Expected.Coded(coding.getSystem(), coding.getCode());
    }
    return answer instanceof IntegerType || answer instanceof DecimalType
        ? new EnableWhen.Expected.Number(
            Double.parseDouble(answer.primitiveValue()), answer instanceof IntegerType)
        : new EnableWhen.Expected.Text(answer.primitiveValue());
  }

  private static FactType type(QuestionnaireItemComponent item) {
    return switch (item.getType()) {
      case BOOLEAN -> new FactType.YesNo();
      case INTEGER -> new FactType.Amount(-1000, 1000, 0, "1");
      case DECIMAL -> new FactType.Amount(-1000, 1000, 1, "1");
      case CHOICE ->
          new FactType.OneOf(
              item.getAnswerOption().stream()
                  .map(o -> (Coding) o.getValue())
                  .map(
                      c ->
                          new Option(
                              c.getSystem(),
                              c.getCode(),
                              c.getDisplay(),
                              OptionalDouble.empty(),
                              false,
                              HERE))
                  .toList());
      default -> new FactType.Words(200);
    };
  }
}
