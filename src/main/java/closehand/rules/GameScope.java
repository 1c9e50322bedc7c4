package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Condition.All;
import closehand.bank.Condition.Any;
import closehand.bank.Condition.AnyGame;
import closehand.bank.Condition.AtLeast;
import closehand.bank.Condition.EveryGame;
import closehand.bank.Condition.Not;
import closehand.bank.Condition.Operand;
import closehand.bank.Condition.Test;
import closehand.bank.Field;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Spreads conditions about "any game" and "every game" over the game slots of the interview.
 *
 * @param slots the slots the questionnaire has, from 1
 */
record GameScope(List<Integer> slots) {
  /** Stands in a test for "this slot holds a game"; no word of the bank's own language. */
  static final String LISTED = "listed";

  private static final String INSIDE = "game.";

  /** The slots for which the kind of game is asked. */
  static GameScope of(Map<String, Field> fields) {
    return new GameScope(
        IntStream.rangeClosed(1, Bank.GAME_SLOTS)
            .filter(slot -> fields.containsKey(genre(slot)))
            .boxed()
            .toList());
  }

  /** The fact that names the kind of game in a slot. */
  static String genre(int slot) {
    return prefix(slot) + "genre";
  }

  /** How the facts about a slot's game begin. */
  static String prefix(int slot) {
    return "games." + slot + ".";
  }

  /** The same condition without "any game" and "every game". */
  Condition spread(Condition condition) {
    if (condition instanceof AnyGame any) {
      return new Any(
          each(
              slot ->
                  new All(
                      List.of(listed(slot, any.where()), within(any.part(), slot)), any.where())),
          any.where());
    }
    if (condition instanceof EveryGame every) {
      Where where = every.where();
      List<Condition> parts = new ArrayList<>();
      parts.add(new Any(each(slot -> listed(slot, where)), where));
      parts.addAll(
          each(
              slot ->
                  new Any(
                      List.of(new Not(listed(slot, where), where), within(every.part(), slot)),
                      where)));
      return new All(parts, where);
    }
    return parts(condition, this::spread);
  }

  private List<Condition> each(IntFunction<Condition> ofSlot) {
    return slots.stream().map(ofSlot::apply).toList();
  }

  private static Condition listed(int slot, Where where) {
    return new Test(genre(slot), LISTED, new Operand.Flag(true, where), where, where, where);
  }

  private static Condition within(Condition condition, int slot) {
    if (condition instanceof Test test && test.fact().startsWith(INSIDE)) {
      return new Test(
          prefix(slot) + test.fact().substring(INSIDE.length()),
          test.operator(),
          test.value(),
          test.where(),
          test.factWhere(),
          test.operatorWhere());
    }
    return parts(condition, part -> within(part, slot));
  }

  /** The same object when no part changes, so that most conditions are not built anew. */
  @SuppressWarnings("ReferenceEquality")
  private static Condition parts(Condition condition, UnaryOperator<Condition> change) {
    if (condition instanceof All all) {
      List<Condition> parts = changed(all.parts(), change);
      return parts == all.parts() ? all : new All(parts, all.where());
    }
    if (condition instanceof Any any) {
      List<Condition> parts = changed(any.parts(), change);
      return parts == any.parts() ? any : new Any(parts, any.where());
    }
    if (condition instanceof Not not) {
      Condition part = change.apply(not.part());
      return part == not.part() ? not : new Not(part, not.where());
    }
    if (condition instanceof AtLeast some) {
      List<Condition> parts = changed(some.parts(), change);
      return parts == some.parts() ? some : new AtLeast(some.count(), parts, some.where());
    }
    return condition;
  }

  /** The same list when nothing in it changes. */
  @SuppressWarnings("ReferenceEquality")
  private static List<Condition> changed(List<Condition> parts, UnaryOperator<Condition> change) {
    List<Condition> changed = new ArrayList<>(parts.size());
    boolean same = true;
    for (Condition part : parts) {
      Condition now = change.apply(part);
      same &= now == part;
      changed.add(now);
    }
    return same ? parts : changed;
  }

  /** Adds every comparison inside a condition that is already spread. */
  static void collectTests(Condition condition, List<Test> into) {
    if (condition instanceof Test test) {
      into.add(test);
    } else {
      for (Condition part : partsOf(condition)) {
        collectTests(part, into);
      }
    }
  }

  private static List<Condition> partsOf(Condition condition) {
    if (condition instanceof All all) {
      return all.parts();
    }
    if (condition instanceof Any any) {
      return any.parts();
    }
    if (condition instanceof AtLeast some) {
      return some.parts();
    }
    return condition instanceof Not not ? List.of(not.part()) : List.of();
  }
}
