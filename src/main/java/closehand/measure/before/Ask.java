package closehand.measure.before;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.TaskBook;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One thing that is asked before anything begins. */
public sealed interface Ask {
  /** The question. */
  String words();

  /** What can be picked, in order; none where a number from 0 to 10 is the answer. */
  List<String> choices();

  /** Something that must be so, or is made so first. */
  record Assured(TaskBook.Assurance assurance) implements Ask {
    @Override
    public String words() {
      return assurance.ask();
    }

    @Override
    public List<String> choices() {
      return List.of("Yes", "Not yet");
    }
  }

  /**
   * A question of the bank that is asked anew.
   *
   * @param field the question
   * @param remote whether the wording over a call is meant
   */
  record Anew(Field field, boolean remote) implements Ask {
    @Override
    public String words() {
      return remote ? field.remoteLabel().orElse(field.label()) : field.label();
    }

    @Override
    public List<String> choices() {
      if (isNumber()) {
        return List.of();
      }
      List<String> words = new ArrayList<>();
      if (field.type() instanceof FactType.OneOf one) {
        one.options().stream().map(Option::display).forEach(words::add);
      } else {
        words.addAll(List.of("Yes", "No"));
      }
      words.add("Not sure, or rather not say");
      return words;
    }

    /** Whether a number from 0 to 10 is the answer. */
    boolean isNumber() {
      return field.type() instanceof FactType.Amount;
    }

    /** What a choice means, from 0; nothing for the last one, which is not sure. */
    Optional<Value> value(int choice) {
      if (isNumber()) {
        return Optional.of(new Value.Number(choice));
      }
      if (field.type() instanceof FactType.OneOf one) {
        return choice < one.options().size()
            ? Optional.of(new Value.Code(one.options().get(choice).code()))
            : Optional.empty();
      }
      return choice < 2 ? Optional.of(new Value.Flag(choice == 0)) : Optional.empty();
    }
  }
}
