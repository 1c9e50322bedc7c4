package closehand.json.snapshot;

import closehand.bank.FactType;
import closehand.bank.Option;

/** What a fact can be. */
final class FactTypeSnapshot {
  private FactTypeSnapshot() {}

  static void write(FactType type, SnapshotOut out) {
    if (type instanceof FactType.YesNo) {
      out.number(0);
    } else if (type instanceof FactType.Amount amount) {
      out.number(1);
      out.fraction(amount.minimum());
      out.fraction(amount.maximum());
      out.number(amount.decimals());
      out.text(amount.unit());
    } else if (type instanceof FactType.OneOf one) {
      out.number(2);
      out.list(one.options(), o -> option(o, out));
    } else if (type instanceof FactType.SeveralOf several) {
      out.number(3);
      out.list(several.options(), o -> option(o, out));
    } else if (type instanceof FactType.Words words) {
      out.number(4);
      out.number(words.maximumLength());
    } else if (type instanceof FactType.WordList) {
      out.number(5);
    }
  }

  static FactType read(SnapshotIn in) {
    return switch (in.number()) {
      case 0 -> new FactType.YesNo();
      case 1 -> new FactType.Amount(in.fraction(), in.fraction(), in.number(), in.text());
      case 2 -> new FactType.OneOf(in.list(() -> option(in)));
      case 3 -> new FactType.SeveralOf(in.list(() -> option(in)));
      case 4 -> new FactType.Words(in.number());
      default -> new FactType.WordList();
    };
  }

  private static void option(Option o, SnapshotOut out) {
    out.text(o.system());
    out.text(o.code());
    out.text(o.display());
    out.fraction(o.ordinal());
    out.flag(o.exclusive());
    out.where(o.where());
  }

  private static Option option(SnapshotIn in) {
    return new Option(in.text(), in.text(), in.text(), in.maybeFraction(), in.flag(), in.where());
  }
}
