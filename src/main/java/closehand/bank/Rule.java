package closehand.bank;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One rule of the trade: when something holds, then something follows, because of a reason.
 *
 * @param id the rule's id, such as {@code R026a}
 * @param instance which side or digit this instance speaks of, such as {@code L} or {@code L.T};
 *     empty for a plain rule
 * @param theme the id of the theme it belongs to
 * @param title a few words
 * @param when what must hold
 * @param unless what keeps it from applying though {@code when} holds
 * @param effects what follows
 * @param reason the reason in a sentence to the player
 * @param briefReason the same in a few words, for a full page; the reason itself where there are
 *     none
 * @param clinicianReason the reason for a clinician, where it differs
 * @param basis source ids, or words such as "common practice"
 * @param examples answers with what the rule makes of them
 * @param where where it stands in the bank
 */
public record Rule(
    String id,
    String instance,
    String theme,
    String title,
    Condition when,
    Optional<Condition> unless,
    Effects effects,
    String reason,
    String briefReason,
    Optional<String> clinicianReason,
    List<String> basis,
    List<Example> examples,
    Where where) {
  public Rule {
    basis = List.copyOf(basis);
    examples = List.copyOf(examples);
  }

  /** A rule whose reason has no shorter form. */
  public Rule(
      String id,
      String instance,
      String theme,
      String title,
      Condition when,
      Optional<Condition> unless,
      Effects effects,
      String reason,
      Optional<String> clinicianReason,
      List<String> basis,
      List<Example> examples,
      Where where) {
    this(
        id,
        instance,
        theme,
        title,
        when,
        unless,
        effects,
        reason,
        reason,
        clinicianReason,
        basis,
        examples,
        where);
  }

  /** The id with its instance, unique in the bank. */
  public String key() {
    return instance.isEmpty() ? id : id + "." + instance;
  }

  /**
   * What follows when a rule fires.
   *
   * @param exclude approaches ruled out
   * @param support points for (above 0) or against (below 0) approaches, -5 to 5
   * @param cautions cautions raised
   * @param restingEffectors body parts that get no job
   * @param effort factors on the effort of body parts
   * @param advice sentences for the page
   * @param holds kinds of task that must wait
   */
  public record Effects(
      List<Located> exclude,
      List<Support> support,
      List<Raised> cautions,
      List<String> restingEffectors,
      List<Effort> effort,
      List<Advice> advice,
      List<TaskKind> holds) {
    public Effects {
      exclude = List.copyOf(exclude);
      support = List.copyOf(support);
      cautions = List.copyOf(cautions);
      restingEffectors = List.copyOf(restingEffectors);
      effort = List.copyOf(effort);
      advice = List.copyOf(advice);
      holds = List.copyOf(holds);
    }
  }

  /** Points for (above 0) or against (below 0) an approach. */
  public record Support(String approach, int points, Where where) {}

  /** A name and where it stands. */
  public record Located(String name, Where where) {}

  /** A caution raised with a class. */
  public record Raised(String code, CautionClass cautionClass, Where where) {}

  /**
   * A factor on effort: above 1 makes a choice less likely.
   *
   * @param effectors body parts, such as {@code L.T}
   * @param inputs kinds of use, such as {@code trigger}; empty means all
   * @param factor 0.5 to 6
   */
  public record Effort(List<String> effectors, List<String> inputs, double factor) {
    public Effort {
      effectors = List.copyOf(effectors);
      inputs = List.copyOf(inputs);
    }
  }

  /** A sentence for the page and the topic it stands under. */
  public record Advice(String topic, String say) {}

  /**
   * Answers with what the rule makes of them.
   *
   * @param given the answers, in the form of a flat answers file
   * @param expect what comes of it
   * @param waitsFor the questions it waits for, when it waits
   */
  public record Example(Given given, Expect expect, List<String> waitsFor, Where where) {
    public Example {
      waitsFor = List.copyOf(waitsFor);
    }
  }

  /** The answers of an example: fact id to value, as read. */
  public record Given(Map<String, FlatValue> values) {
    public Given {
      values = Map.copyOf(values);
    }
  }

  /** What an example expects. */
  public enum Expect {
    FIRES,
    NOT,
    WAITS
  }
}
