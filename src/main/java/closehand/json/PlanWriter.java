package closehand.json;

import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.EffectorLoad;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.ControlPlan.RunnerUp;
import closehand.plan.ControlPlan.Shared;
import closehand.strain.Accepted;
import closehand.strain.PlanLoad;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * Writes control plans as one JSON object for other programs. The members {@code plans}, and in
 * each {@code game}, {@code approaches}, {@code cost}, {@code bound}, {@code proven}, {@code
 * assignments}, {@code leftOut}, {@code effectors} and {@code settings} are fixed; others may be
 * added.
 */
public final class PlanWriter {
  private static final double THOUSAND = 1000;

  private final JsonGenerator out;

  private PlanWriter(JsonGenerator out) {
    this.out = out;
  }

  /**
   * The whole object, ending in a line break.
   *
   * @param plans one a game
   * @param withheld why there are none while suggestions wait; empty otherwise
   */
  public static String write(List<ControlPlan> plans, List<String> withheld) {
    return write(plans, List.of(), List.of(), List.of(), withheld);
  }

  /**
   * The same with what each plan asks of the body.
   *
   * @param clashes for each plan the demands that cannot be kept together, as few as can be
   * @param loads one a plan, in the same order, or none
   * @param accepted red parts that a clinician accepted
   */
  public static String write(
      List<ControlPlan> plans,
      List<List<String>> clashes,
      List<PlanLoad> loads,
      List<Accepted> accepted,
      List<String> withheld) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeArrayFieldStart("plans");
          for (int i = 0; i < plans.size(); i++) {
            out.writeStartObject();
            new PlanWriter(out).plan(plans.get(i));
            if (i < clashes.size() && !clashes.get(i).isEmpty()) {
              texts(out, "clash", clashes.get(i));
            }
            if (i < loads.size()) {
              LoadWriter.write(out, loads.get(i), accepted);
            }
            out.writeEndObject();
          }
          out.writeEndArray();
          out.writeBooleanField("withheld", !withheld.isEmpty());
          if (!withheld.isEmpty()) {
            texts(out, "because", withheld);
          }
          out.writeEndObject();
        });
  }

  private void plan(ControlPlan plan) throws IOException {
    out.writeNumberField("game", plan.game());
    out.writeStringField("genre", plan.genre());
    texts(out, "approaches", plan.approaches());
    out.writeNumberField("cost", plan.cost());
    out.writeNumberField("bound", plan.bound());
    out.writeBooleanField("proven", plan.proven());
    out.writeArrayFieldStart("assignments");
    for (Assignment assignment : plan.assignments()) {
      assignment(assignment);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("leftOut");
    for (LeftOut left : plan.leftOut()) {
      leftOut(left);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("shared");
    for (Shared shared : plan.settled()) {
      shared(shared);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("effectors");
    for (EffectorLoad load : plan.effectors()) {
      out.writeStartObject();
      out.writeStringField("id", load.effector());
      out.writeNumberField("perMinute", rounded(load.perMinute()));
      out.writeNumberField("heldShare", rounded(load.heldShare()));
      out.writeStringField("light", load.light().name().toLowerCase(Locale.ROOT));
      out.writeEndObject();
    }
    out.writeEndArray();
    texts(out, "settings", plan.settings());
    texts(out, "waitsFor", plan.waitsFor());
    if (!plan.unkept().isEmpty()) {
      texts(out, "unkept", plan.unkept());
    }
  }

  private void assignment(Assignment assignment) throws IOException {
    out.writeStartObject();
    out.writeStringField("action", assignment.id());
    out.writeStringField("name", assignment.name());
    out.writeStringField("input", assignment.path());
    out.writeNumberField("layer", assignment.held().isPresent() ? 1 : 0);
    out.writeStringField("mode", assignment.mode().name().toLowerCase(Locale.ROOT));
    out.writeStringField("effector", assignment.effector());
    out.writeNumberField("cost", assignment.cost());
    out.writeNumberField("factor", rounded(assignment.factor()));
    texts(out, "rules", assignment.rules());
    out.writeArrayFieldStart("runnerUp");
    for (RunnerUp runner : assignment.runnersUp()) {
      out.writeStartObject();
      out.writeStringField("input", runner.input());
      out.writeNumberField("extra", runner.extra());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void leftOut(LeftOut left) throws IOException {
    out.writeStartObject();
    out.writeStringField("action", left.id());
    out.writeStringField("name", left.name());
    out.writeNumberField("importance", left.importance());
    out.writeStringField("because", left.because());
    texts(out, "bringInBy", left.bringInBy());
    out.writeEndObject();
  }

  private void shared(Shared shared) throws IOException {
    out.writeStartObject();
    out.writeStringField("action", shared.action());
    out.writeStringField("how", shared.words());
    out.writeStringField("with", shared.with());
    out.writeEndObject();
  }

  private static double rounded(double value) {
    return Math.round(value * THOUSAND) / THOUSAND;
  }

  private static void texts(JsonGenerator out, String name, List<String> values)
      throws IOException {
    out.writeFieldName(name);
    out.writeArray(values.toArray(new String[0]), 0, values.size());
  }
}
