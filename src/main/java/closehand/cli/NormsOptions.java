package closehand.cli;

import closehand.json.NormsReader;
import closehand.measure.norms.Comparison;
import closehand.measure.norms.Group;
import closehand.measure.norms.Norms;
import closehand.measure.norms.Strength;
import closehand.measure.norms.Unit;
import closehand.report.NormText;
import closehand.strain.Effort;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What can be typed after {@code closehand norms}. Nothing of it is kept. */
@Command(
    name = "norms",
    mixinStandardHelpOptions = true,
    description = {
      "A measured grip or pinch beside what is usual, and how far a thumb may reach.",
      "What is usual at an age is context and no verdict. Nothing is kept."
    })
final class NormsOptions extends Subcommand {
  private static final int MOST_AGE = 120;
  private static final double LEAST_HAND = 5;
  private static final double MOST_HAND = 30;

  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Option(names = "--sex", paramLabel = "female|male", description = "As the tables divide people.")
  private Group.@Nullable Sex sex;

  @Option(names = "--age", paramLabel = "YEARS", description = "Age in years.")
  private @Nullable Integer age;

  @Option(names = "--hand", paramLabel = "right|left", description = "The hand measured.")
  private Group.Hand hand = Group.Hand.RIGHT;

  @Option(names = "--grip", paramLabel = "KG", description = "Grip in kilograms.")
  private @Nullable Double grip;

  @Option(names = "--tip-pinch", paramLabel = "KG", description = "Pinch with the finger tips.")
  private @Nullable Double tip;

  @Option(names = "--key-pinch", paramLabel = "KG", description = "Pinch as with a key.")
  private @Nullable Double key;

  @Option(
      names = "--palmar-pinch",
      paramLabel = "KG",
      description = "Pinch with thumb and two fingers.")
  private @Nullable Double palmar;

  @Option(
      names = "--hand-length",
      paramLabel = "CM",
      description = "From the wrist crease to the tip of the middle finger.")
  private @Nullable Double handLength;

  @Override
  int run(Surroundings surroundings) throws IOException {
    Optional<String> wrong = wrong();
    if (wrong.isPresent()) {
      surroundings.error().println(wrong.get());
      return ExitCode.USAGE;
    }
    Norms norms = NormsReader.embedded();
    List<Comparison> all = new ArrayList<>();
    compare(norms, Strength.GRIP, grip, all);
    compare(norms, Strength.TIP_PINCH, tip, all);
    compare(norms, Strength.KEY_PINCH, key, all);
    compare(norms, Strength.PALMAR_PINCH, palmar, all);
    OptionalDouble length =
        handLength == null ? OptionalDouble.empty() : OptionalDouble.of(handLength);
    surroundings.output().print(NormText.of(all, norms.thumb(), length, bank.glyphs(surroundings)));
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  private void compare(
      Norms norms, Strength strength, @Nullable Double kilograms, List<Comparison> all) {
    if (kilograms != null && sex != null && age != null) {
      all.addAll(norms.compare(strength, sex, hand, age, kilograms));
    }
  }

  private Optional<String> wrong() {
    boolean strength = grip != null || tip != null || key != null || palmar != null;
    if (!strength && handLength == null) {
      return Optional.of("Give a measurement, such as --grip 14, or --hand-length 18.");
    }
    if (strength && (sex == null || age == null)) {
      return Optional.of("A strength needs --sex and --age, as the tables are made by both.");
    }
    if (age != null && (age < 1 || age > MOST_AGE)) {
      return Optional.of("--age is a number of years from 1 to " + MOST_AGE + ".");
    }
    if (hand == Group.Hand.EITHER) {
      return Optional.of("--hand is right or left.");
    }
    double most = Math.floor(Unit.NEWTON.toKilograms(Effort.MOST_HAND_NEWTONS));
    for (Double one : new Double[] {grip, tip, key, palmar}) {
      if (one != null && !(one >= 0 && one <= most)) {
        return Optional.of(
            "A grip or pinch is from 0 to " + Math.round(most) + " kilograms; check the unit.");
      }
    }
    return handLength != null && !(handLength >= LEAST_HAND && handLength <= MOST_HAND)
        ? Optional.of("--hand-length is from 5 to 30 centimetres.")
        : Optional.empty();
  }
}
