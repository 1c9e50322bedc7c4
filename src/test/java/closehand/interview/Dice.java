package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Option;
import java.util.ArrayList;
import java.util.List;

/** Lawful answers by chance, the same for the same seed (SplitMix64, Steele et al. 2014). */
public final class Dice {
  private long state;

  public Dice(long seed) {
    state = seed * 0x9E3779B97F4A7C15L;
  }

  private long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** A number from 0 up to, but without, {@code bound}. */
  public int below(int bound) {
    return (int) Math.floorMod(next(), (long) bound);
  }

  public boolean oneIn(int chances) {
    return below(chances) == 0;
  }

  public <T> T of(List<T> some) {
    return some.get(below(some.size()));
  }

  /** A value this kind of field can take; never the choice of nothing. */
  public Value value(FactType type) {
    if (type instanceof FactType.YesNo) {
      return new Value.Flag(oneIn(2));
    }
    if (type instanceof FactType.Amount amount) {
      double steps = Math.pow(10, amount.decimals());
      int span = (int) Math.round((amount.maximum() - amount.minimum()) * steps);
      return new Value.Number(Math.round(amount.minimum() * steps + below(span + 1)) / steps);
    }
    if (type instanceof FactType.OneOf one) {
      return new Value.Code(of(one.options()).code());
    }
    if (type instanceof FactType.SeveralOf several) {
      return new Value.Codes(picks(several.options()));
    }
    return type instanceof FactType.Words
        ? new Value.Text(
            of(List.of("a few words", "caf\u00e9 \"quoted\"", "1 < 2 & \\ \ud83c\udfae")))
        : new Value.Texts(List.of("one", "two, with a comma").subList(0, 1 + below(2)));
  }

  private List<String> picks(List<Option> options) {
    Option sure = of(options);
    List<String> codes = new ArrayList<>();
    for (Option option : options) {
      boolean also = !sure.exclusive() && !option.exclusive() && oneIn(3);
      if (option.equals(sure) || also) {
        codes.add(option.code());
      }
    }
    return codes;
  }

  /** An answer for this kind of field: most often a value, sometimes a reason for none. */
  public Answer answer(FactType type) {
    return oneIn(8)
        ? new Answer.Absent(of(List.of(Answer.Reason.values())))
        : new Answer.Given(value(type));
  }

  public Provenance provenance() {
    return new Provenance(
        of(List.of(Provenance.By.values())),
        of(List.of(Provenance.How.values())),
        oneIn(4) ? "noted beside: \"so so\"" : "");
  }
}
