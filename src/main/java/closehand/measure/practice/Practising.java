package closehand.measure.practice;

import closehand.bank.StopSign;
import closehand.interview.WellKnown;
import closehand.measure.practice.PracticeRun.At;
import closehand.measure.practice.PracticeRun.Body;
import closehand.measure.practice.PracticeRun.Moments;
import closehand.measure.practice.PracticeRun.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * How a practice run goes on.
 *
 * <p>A held key sends itself again after some 250 to 1,000 milliseconds and cannot be told from a
 * second press then; so the same key counts again only after {@link #SAME_KEY_MILLIS}, and gaps
 * between prompts are longer than that.
 */
final class Practising {
  /** The same key within this time of its last arrival came by itself. */
  static final long SAME_KEY_MILLIS = 1_100;

  /** A key that follows the same one so soon bounced. */
  static final long BOUNCE_MILLIS = 100;

  /** Another key so soon after was pressed along. */
  static final long ALONG_MILLIS = 150;

  /** Nobody answers a prompt sooner than this (common practice in reaction tasks, no source). */
  static final long TOO_SOON_MILLIS = 100;

  private static final long GAP_MILLIS = 1_200;
  private static final int GAP_SPREAD_MILLIS = 800;
  private static final long REST_MILLIS = 30_000;
  private static final long TIRED_REST_MILLIS = 90_000;
  private static final int MOST_LOST = 3;
  private static final int MOST_AGAIN = 10;
  private static final long SECOND = 1_000;

  private Practising() {}

  static PracticeRun update(PracticeRun before, Happening happening) {
    if (before.over()) {
      return before;
    }
    if (happening instanceof Happening.Elapsed elapsed) {
      return elapsed(before, elapsed.millis());
    }
    PracticeRun run = before.saying("");
    if (happening instanceof Happening.Pressed pressed) {
      return pressed(run, pressed.signal(), pressed.millis());
    }
    if (happening instanceof Happening.Begun begun) {
      return begun(run, begun.millis());
    }
    if (happening instanceof Happening.Disturbed disturbed) {
      return disturbed(run, disturbed.what());
    }
    if (happening instanceof Happening.PainTold told) {
      return told(run, told);
    }
    if (happening instanceof Happening.Stopped stopped) {
      return run.stopped(stopped.reason());
    }
    return inRound(run) ? run.stage(Stage.PAUSED) : run;
  }

  private static boolean inRound(PracticeRun run) {
    return run.stage() == Stage.BETWEEN || run.stage() == Stage.PROMPT;
  }

  private static PracticeRun elapsed(PracticeRun run, long now) {
    if (run.stage() != Stage.BETWEEN || now < run.moments().due()) {
      return run;
    }
    Moments m = run.moments();
    return run.saying("")
        .stage(Stage.PROMPT)
        .with(new Moments(m.due(), now, m.begun(), m.worked(), m.lastAt(), m.last(), m.repeats()));
  }

  private static PracticeRun begun(PracticeRun run, long now) {
    Moments m = run.moments();
    if (run.stage() == Stage.RESTING && now < m.due()) {
      long left = (m.due() - now + SECOND - 1) / SECOND;
      return run.saying("Rest a little longer: about " + left + " seconds more.");
    }
    boolean begins =
        run.stage() == Stage.READY || run.stage() == Stage.RESTING || run.stage() == Stage.PAUSED;
    if (!begins) {
      return run;
    }
    At at = run.at();
    long before = run.stage() == Stage.PAUSED ? m.going() : 0;
    return run.stage(Stage.BETWEEN)
        .at(new At(at.round(), at.cue(), 0, at.again()))
        .with(
            new Moments(
                now + gap(run), 0, now, m.worked() + before, m.lastAt(), m.last(), m.repeats()));
  }

  /** Some one to two seconds, uneven so that nobody can press by rhythm. */
  private static long gap(PracticeRun run) {
    long place = run.at().round() * 1_000L + run.at().cue();
    return GAP_MILLIS + new Chance(run.body().seed() + place).below(GAP_SPREAD_MILLIS);
  }

  private static PracticeRun pressed(PracticeRun run, Signal signal, long now) {
    Moments m = run.moments();
    boolean again =
        m.last().filter(signal::equals).isPresent() && now - m.lastAt() < SAME_KEY_MILLIS;
    PracticeRun next =
        run.with(
            new Moments(
                m.due(),
                m.shown(),
                m.begun(),
                m.worked(),
                now,
                Optional.of(signal),
                again ? m.repeats() + 1 : 0));
    if (!inRound(run)) {
      return next;
    }
    if (again) {
      return cameAgain(next, now - m.lastAt(), now);
    }
    if (now < m.begun()) {
      return next;
    }
    if (run.stage() == Stage.PROMPT) {
      return answered(next, signal, now);
    }
    if (now - m.lastAt() < ALONG_MILLIS && !run.going().isEmpty()) {
      return marked(next, new Try.Marks(false, false, true))
          .saying("Another key came along with it. It does not count.");
    }
    return next.stage(Stage.PAUSED)
        .saying("A key came between two prompts, so we pause. It does not count.");
  }

  private static PracticeRun cameAgain(PracticeRun run, long since, long now) {
    boolean bounced = since < BOUNCE_MILLIS && run.moments().repeats() == 1;
    Moments m = run.moments();
    PracticeRun next = marked(run, new Try.Marks(!bounced, bounced, false));
    if (run.stage() == Stage.BETWEEN) {
      long due = Math.max(m.due(), now + GAP_MILLIS);
      next =
          next.with(
              new Moments(
                  due, m.shown(), m.begun(), m.worked(), m.lastAt(), m.last(), m.repeats()));
    }
    return next.saying(
        bounced
            ? "That key came twice at once. It counts once."
            : "A key that is held down counts once.");
  }

  private static PracticeRun marked(PracticeRun run, Try.Marks more) {
    if (run.going().isEmpty()) {
      return run;
    }
    List<Try> going = new ArrayList<>(run.going());
    Try last = going.get(going.size() - 1);
    going.set(going.size() - 1, last.with(last.marks().and(more)));
    return run.tries(run.counted(), going);
  }

  private static PracticeRun answered(PracticeRun run, Signal signal, long now) {
    At at = run.at();
    boolean first = at.step() == 0;
    long millis = now - run.moments().shown();
    if (first && millis < TOO_SOON_MILLIS) {
      PracticeRun again = at.again() < MOST_AGAIN ? run.askedAgain() : run;
      return on(again.at(new At(at.round(), at.cue(), 0, at.again() + 1)), now)
          .saying("That came too soon to be an answer. It does not count.");
    }
    Try one = judged(run, signal, first ? OptionalLong.of(millis) : OptionalLong.empty());
    List<Try> going = new ArrayList<>(run.going());
    going.add(one);
    PracticeRun next = run.tries(run.counted(), going);
    if (one.hit() && at.step() + 1 < run.cue().actions().size()) {
      return next.at(new At(at.round(), at.cue(), at.step() + 1, at.again()));
    }
    return on(next, now).saying(one.hit() ? "" : missed(next, one));
  }

  private static Try judged(PracticeRun run, Signal signal, OptionalLong millis) {
    Sheet.Job job = run.asked();
    Sheet.Target wanted = run.sheet().target(job.action());
    boolean hit = wanted.signal().equals(signal);
    Optional<Sheet.Target> other = hit ? Optional.empty() : run.sheet().sending(signal);
    return new Try(
        run.at().round(),
        job.action(),
        job.input(),
        hit,
        hit ? millis : OptionalLong.empty(),
        other.map(Sheet.Target::input),
        other.filter(o -> o.place().isBeside(wanted.place())).isPresent(),
        Try.Marks.NONE);
  }

  private static String missed(PracticeRun run, Try one) {
    return one.wrong()
        .flatMap(w -> run.sheet().targets().stream().filter(t -> t.input().equals(w)).findFirst())
        .map(t -> "That was: " + t.name() + ".")
        .orElse("Another key came.");
  }

  /** On to the next prompt, or to the end of the round. */
  private static PracticeRun on(PracticeRun run, long now) {
    At at = run.at();
    Moments m = run.moments();
    if (m.worked() + now - m.begun() > run.body().mostMillis()) {
      return run.stopped(StopReason.TIME);
    }
    if (at.cue() + 1 < run.rounds().get(at.round()).size()) {
      PracticeRun next = run.at(new At(at.round(), at.cue() + 1, 0, at.again()));
      return next.stage(Stage.BETWEEN)
          .with(
              new Moments(
                  now + gap(next), 0, m.begun(), m.worked(), m.lastAt(), m.last(), m.repeats()));
    }
    return ended(run, now);
  }

  private static PracticeRun ended(PracticeRun run, long now) {
    Moments m = run.moments();
    List<Try> counted = new ArrayList<>(run.counted());
    counted.addAll(run.going());
    Body b = run.body();
    long hits = run.going().stream().filter(Try::hit).count();
    int lost = 2 * hits < run.going().size() ? b.lost() + 1 : 0;
    if (lost >= MOST_LOST) {
      return run.tries(counted, List.of()).stopped(StopReason.of(StopSign.DISTRESS));
    }
    return run.tries(counted, List.of())
        .stage(Stage.ASKING)
        .at(new At(run.at().round() + 1, 0, 0, 0))
        .with(b.lost(lost))
        .with(
            new Moments(0, 0, 0, m.worked() + now - m.begun(), m.lastAt(), m.last(), m.repeats()));
  }

  private static PracticeRun disturbed(PracticeRun run, Happening.What what) {
    if (what == Happening.What.CLOSED) {
      return run.stopped(StopReason.CLOSED);
    }
    if (!inRound(run)) {
      return run;
    }
    Body b = run.body();
    if (b.lost() + 1 >= MOST_LOST) {
      return run.stopped(StopReason.of(StopSign.DISTRESS));
    }
    return run.tries(run.counted(), List.of())
        .stage(Stage.READY)
        .at(new At(run.at().round(), 0, 0, 0))
        .with(run.moments().ended())
        .with(b.lost(b.lost() + 1))
        .saying(what.words() + ". This round is thrown away; nothing of it counts.");
  }

  private static PracticeRun told(PracticeRun run, Happening.PainTold told) {
    if (run.stage() != Stage.ASKING) {
      return run;
    }
    Body b = run.body();
    boolean first = b.painBefore().isEmpty();
    if (told.pain() >= WellKnown.PAIN_THAT_STOPS
        || (!first && told.pain() - b.painBefore().getAsInt() >= WellKnown.PAIN_RISE_THAT_STOPS)) {
      return run.stopped(StopReason.of(StopSign.PAIN));
    }
    if (first) {
      return run.stage(Stage.READY)
          .with(
              new Body(OptionalInt.of(told.pain()), b.tired(), b.lost(), b.seed(), b.mostMillis()));
    }
    if (run.at().round() >= run.rounds().size()) {
      return run.stage(Stage.DONE);
    }
    Moments m = run.moments();
    long rest = b.tired() ? TIRED_REST_MILLIS : REST_MILLIS;
    return run.stage(Stage.RESTING)
        .with(
            new Moments(told.millis() + rest, 0, 0, m.worked(), m.lastAt(), m.last(), m.repeats()));
  }
}
