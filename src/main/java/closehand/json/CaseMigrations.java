package closehand.json;

import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Brings the documents of older programs to the present schema, one step at a time.
 *
 * <p>Each step is a pure function from one schema to the next and is never changed once a program
 * with it was given to anybody. {@code src/test/resources/cases} holds a document of every schema,
 * which tests open for ever.
 */
final class CaseMigrations {
  /** The step at index n leads from schema n + 1 to n + 2. */
  private static final List<UnaryOperator<JsonValue.Obj>> STEPS =
      List.of(
          CaseMigrations::withRecord, CaseMigrations::withMeasured, CaseMigrations::withHalfTyped);

  private CaseMigrations() {}

  /** The document in the present schema; the schema it says it has must be a known one. */
  static JsonValue.Obj migrated(JsonValue.Obj document, int schema) {
    JsonValue.Obj now = document;
    for (UnaryOperator<JsonValue.Obj> step : STEPS.subList(schema - 1, STEPS.size())) {
      now = step.apply(now);
    }
    return now;
  }

  /**
   * 1 to 2: consents, history, what was suggested, plans and trials have places of their own. What
   * happened before is not known, so they begin empty.
   */
  private static JsonValue.Obj withRecord(JsonValue.Obj one) {
    JsonValue.Obj two = with(one, "schema", new JsonValue.Num(2, "2", one.where()));
    for (String name : List.of("consents", "history", "suggested", "plans", "trials")) {
      two = with(two, name, new JsonValue.Arr(List.of(), one.where()));
    }
    return two;
  }

  /** 2 to 3: measured tasks have a place of their own. None were kept before. */
  private static JsonValue.Obj withMeasured(JsonValue.Obj two) {
    JsonValue.Obj three = with(two, "schema", new JsonValue.Num(3, "3", two.where()));
    return with(three, "measured", new JsonValue.Arr(List.of(), two.where()));
  }

  /** 3 to 4: what was typed and not given has a place of its own. None was kept before. */
  private static JsonValue.Obj withHalfTyped(JsonValue.Obj three) {
    JsonValue.Obj four = with(three, "schema", new JsonValue.Num(4, "4", three.where()));
    return with(four, "halfTyped", new JsonValue.Obj(List.of(), three.where()));
  }

  /** The same object with this member, in its old place or at the end. */
  private static JsonValue.Obj with(JsonValue.Obj object, String name, JsonValue value) {
    List<JsonValue.Member> members = new ArrayList<>();
    boolean replaced = false;
    for (JsonValue.Member member : object.members()) {
      boolean same = member.name().equals(name);
      members.add(same ? new JsonValue.Member(name, member.nameWhere(), value) : member);
      replaced |= same;
    }
    if (!replaced) {
      Where where = object.where();
      members.add(new JsonValue.Member(name, where, value));
    }
    return new JsonValue.Obj(members, object.where());
  }
}
