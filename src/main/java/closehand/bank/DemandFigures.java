package closehand.bank;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the styles of a game's actions are understood when a control plan is made.
 *
 * @param movingShare share of play spent moving or steering
 * @param movementCountsAs how much of a press one movement of a stick or pointer counts as
 * @param longestHeldShare the most of play that one action is taken to be held
 * @param rapidPressesPerSecond presses a second when an action wants rapid pressing
 * @param directions by style: the directions that stand for a stick where there is none
 * @param ownDirections by action: directions of an action that differ from its style
 * @param settings what a game's menus change about an action
 * @param irreversible actions that lose something and cannot be undone
 * @param jobs actions of different games that are the same job
 */
public record DemandFigures(
    double movingShare,
    double movementCountsAs,
    double longestHeldShare,
    double rapidPressesPerSecond,
    Map<String, Directions> directions,
    Map<String, Directions> ownDirections,
    List<Setting> settings,
    List<String> irreversible,
    List<Job> jobs) {
  public DemandFigures {
    directions = Map.copyOf(directions);
    ownDirections = Map.copyOf(ownDirections);
    settings = List.copyOf(settings);
    irreversible = List.copyOf(irreversible);
    jobs = List.copyOf(jobs);
  }

  /**
   * Presses that stand for a movement.
   *
   * @param names what each is called
   * @param keys where each points: up, left, down or right
   * @param shares share of the movement's presses, together 1
   */
  public record Directions(List<String> names, List<String> keys, List<Double> shares) {
    public Directions {
      names = List.copyOf(names);
      keys = List.copyOf(keys);
      shares = List.copyOf(shares);
    }
  }

  /**
   * A setting that changes what an action asks.
   *
   * @param option the code of the setting in the questions about a game
   * @param words what an action's own options call it; any of them inside the text
   * @param does what it does to the action
   */
  public record Setting(String option, List<String> words, Effect does) {
    public Setting {
      words = List.copyOf(words);
    }

    /** Whether an action's own option is this setting. */
    public boolean fits(String option) {
      return words.stream().anyMatch(option::contains);
    }
  }

  /** What a setting does to an action. */
  public enum Effect {
    /** A hold becomes one press for on and one for off. */
    TOGGLE,
    /** The game does it instead of the player. */
    INSTEAD,
    /** It becomes easier; nothing changes in the plan. */
    HELPS
  }

  /**
   * The same job in several games.
   *
   * @param name its name
   * @param actions at most one of each game
   */
  public record Job(String name, List<String> actions) {
    public Job {
      actions = List.copyOf(actions);
    }
  }

  /** The job an action does, if other games have it too. */
  public Optional<String> job(String action) {
    return jobs.stream().filter(j -> j.actions().contains(action)).map(Job::name).findFirst();
  }
}
