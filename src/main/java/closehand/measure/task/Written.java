package closehand.measure.task;

import closehand.bank.Task;
import closehand.interview.Value;
import java.util.List;
import java.util.Optional;

/** What somebody writes down of what was counted or seen. */
final class Written {
  private Written() {}

  static Optional<String> picked(List<Task.Choice> choices, TaskMessage.Pick pick) {
    return pick.choice() >= 0 && pick.choice() < choices.size()
        ? Optional.of(choices.get(pick.choice()).code())
        : Optional.empty();
  }

  /** What a message says of a measure, if it fits. */
  static Optional<Value> value(Task.Measure measure, TaskMessage message) {
    return switch (measure.kind()) {
      case COUNT ->
          message instanceof TaskMessage.Number number
                  && number.value() >= measure.minimum()
                  && number.value() <= measure.maximum()
              ? Optional.of(new Value.Number(number.value()))
              : Optional.empty();
      case YES_NO ->
          message instanceof TaskMessage.Say say
              ? Optional.of(new Value.Flag(say.yes()))
              : Optional.empty();
      case CHOICE ->
          message instanceof TaskMessage.Pick pick
              ? picked(measure.options(), pick).map(Value.Code::new)
              : Optional.empty();
      case SEVERAL ->
          message instanceof TaskMessage.Picks picks
                  && picks.choices().stream().allMatch(c -> c >= 0 && c < measure.options().size())
              ? Optional.of(
                  new Value.Codes(
                      picks.choices().stream()
                          .distinct()
                          .map(c -> measure.options().get(c).code())
                          .toList()))
              : Optional.empty();
      case DROP -> Optional.empty();
    };
  }
}
