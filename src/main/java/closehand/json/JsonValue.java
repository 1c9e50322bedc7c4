package closehand.json;

import closehand.bank.Where;
import java.util.List;
import java.util.Optional;

/** A JSON value that knows where it stands. */
public sealed interface JsonValue {
  /** Where it starts. */
  Where where();

  /** What kind of value it is, for messages. */
  default String kind() {
    if (this instanceof Obj) {
      return "an object";
    }
    if (this instanceof Arr) {
      return "a list";
    }
    if (this instanceof Str) {
      return "text";
    }
    if (this instanceof Num) {
      return "a number";
    }
    return this instanceof Bool ? "true or false" : "null";
  }

  /** An object; a member named twice is kept once, the first time. */
  record Obj(List<Member> members, Where where) implements JsonValue {
    public Obj {
      members = List.copyOf(members);
    }

    /** The member with this name. */
    public Optional<JsonValue> member(String name) {
      for (Member member : members) {
        if (member.name().equals(name)) {
          return Optional.of(member.value());
        }
      }
      return Optional.empty();
    }

    /** The same object without this member. */
    public Obj without(String name) {
      return new Obj(members.stream().filter(m -> !m.name().equals(name)).toList(), where);
    }
  }

  /** One member of an object. */
  record Member(String name, Where nameWhere, JsonValue value) {}

  /** A list. */
  record Arr(List<JsonValue> items, Where where) implements JsonValue {
    public Arr {
      items = List.copyOf(items);
    }
  }

  /** Text. */
  record Str(String value, Where where) implements JsonValue {}

  /**
   * A number.
   *
   * @param text as it was written
   */
  record Num(double value, String text, Where where) implements JsonValue {
    /** Whether it has nothing after the point. */
    public boolean isWhole() {
      return value == Math.rint(value);
    }
  }

  /** True or false. */
  record Bool(boolean value, Where where) implements JsonValue {}

  /** The value null. */
  record Null(Where where) implements JsonValue {}
}
