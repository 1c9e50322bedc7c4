package closehand.json.snapshot;

import closehand.bank.Condition;

/** Conditions of rules and derived terms. */
final class ConditionSnapshot {
  private ConditionSnapshot() {}

  static void write(Condition condition, SnapshotOut out) {
    if (condition instanceof Condition.Test test) {
      out.number(0);
      out.text(test.fact());
      out.text(test.operator());
      operand(test.value(), out);
      out.where(test.where());
      out.where(test.factWhere());
      out.where(test.operatorWhere());
      return;
    }
    if (condition instanceof Condition.All all) {
      out.number(1);
      out.list(all.parts(), p -> write(p, out));
    } else if (condition instanceof Condition.Any any) {
      out.number(2);
      out.list(any.parts(), p -> write(p, out));
    } else if (condition instanceof Condition.Not not) {
      out.number(3);
      write(not.part(), out);
    } else if (condition instanceof Condition.AtLeast some) {
      out.number(4);
      out.number(some.count());
      out.list(some.parts(), p -> write(p, out));
    } else if (condition instanceof Condition.AnyGame any) {
      out.number(5);
      write(any.part(), out);
    } else if (condition instanceof Condition.EveryGame every) {
      out.number(6);
      write(every.part(), out);
    } else {
      out.number(7);
    }
    out.where(condition.where());
  }

  static Condition read(SnapshotIn in) {
    return switch (in.number()) {
      case 0 ->
          new Condition.Test(in.text(), in.text(), operand(in), in.where(), in.where(), in.where());
      case 1 -> new Condition.All(in.list(() -> read(in)), in.where());
      case 2 -> new Condition.Any(in.list(() -> read(in)), in.where());
      case 3 -> new Condition.Not(read(in), in.where());
      case 4 -> new Condition.AtLeast(in.number(), in.list(() -> read(in)), in.where());
      case 5 -> new Condition.AnyGame(read(in), in.where());
      case 6 -> new Condition.EveryGame(read(in), in.where());
      default -> new Condition.Always(in.where());
    };
  }

  static void operand(Condition.Operand operand, SnapshotOut out) {
    if (operand instanceof Condition.Operand.Number number) {
      out.number(0);
      out.fraction(number.value());
    } else if (operand instanceof Condition.Operand.Flag flag) {
      out.number(1);
      out.flag(flag.value());
    } else if (operand instanceof Condition.Operand.Code code) {
      out.number(2);
      out.text(code.value());
    } else if (operand instanceof Condition.Operand.Codes codes) {
      out.number(3);
      out.list(codes.values(), c -> code(c, out));
    }
    out.where(operand.where());
  }

  static Condition.Operand operand(SnapshotIn in) {
    return switch (in.number()) {
      case 0 -> new Condition.Operand.Number(in.fraction(), in.where());
      case 1 -> new Condition.Operand.Flag(in.flag(), in.where());
      case 2 -> code(in);
      default -> new Condition.Operand.Codes(in.list(() -> code(in)), in.where());
    };
  }

  private static void code(Condition.Operand.Code code, SnapshotOut out) {
    out.text(code.value());
    out.where(code.where());
  }

  private static Condition.Operand.Code code(SnapshotIn in) {
    return new Condition.Operand.Code(in.text(), in.where());
  }
}
