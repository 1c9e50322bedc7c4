package closehand.measure.practice;

import java.util.List;
import java.util.Optional;

/**
 * What is practised: the inputs of one control plan and the actions on them.
 *
 * @param targets the inputs that arrive here
 * @param jobs the actions, each on one of the targets
 * @param pairs actions that the game wants pressed together
 */
public record Sheet(List<Target> targets, List<Job> jobs, List<Pair> pairs) {
  /** Copies the lists; a job on an input that is not there is a caller's bug. */
  public Sheet {
    targets = List.copyOf(targets);
    jobs = List.copyOf(jobs);
    pairs = List.copyOf(pairs);
    for (Job job : jobs) {
      if (targets.stream().noneMatch(t -> t.input().equals(job.input()))) {
        throw new IllegalArgumentException("no input for the action " + job.action());
      }
    }
  }

  /**
   * One input.
   *
   * @param input its id
   * @param name plain words
   * @param part the part of the body that works it, in plain words
   * @param place where it lies
   * @param signal what it sends
   */
  public record Target(String input, String name, String part, Place place, Signal signal) {}

  /**
   * Where an input lies on its device.
   *
   * @param device the device
   * @param column left to right
   * @param row top to bottom
   */
  public record Place(String device, int column, int row) {
    /** Whether both lie side by side, or corner to corner. */
    public boolean isBeside(Place other) {
      return device.equals(other.device)
          && Math.abs(column - other.column) <= 1
          && Math.abs(row - other.row) <= 1
          && !equals(other);
    }
  }

  /**
   * One action on one input.
   *
   * @param action its id
   * @param name plain words, as it is prompted
   * @param input the id of its input
   * @param perMinute how often the game asks for it, 0 or more
   * @param urgency 0 no hurry to 3 at once
   * @param held what is held first, for a second meaning of the input
   */
  public record Job(
      String action,
      String name,
      String input,
      double perMinute,
      int urgency,
      Optional<String> held) {}

  /** Two actions by their ids. */
  public record Pair(String first, String second) {}

  /** The job with this action. */
  public Job job(String action) {
    return jobs.stream()
        .filter(j -> j.action().equals(action))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no action " + action));
  }

  /** The input of an action. */
  public Target target(String action) {
    String input = job(action).input();
    return targets.stream().filter(t -> t.input().equals(input)).findFirst().orElseThrow();
  }

  /** The first input that sends this. */
  public Optional<Target> sending(Signal signal) {
    return targets.stream().filter(t -> t.signal().equals(signal)).findFirst();
  }
}
