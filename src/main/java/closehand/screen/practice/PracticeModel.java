package closehand.screen.practice;

import closehand.bank.StopSign;
import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.Happening;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Signal;
import closehand.measure.practice.StopReason;
import closehand.screen.frame.Key;
import java.util.Map;
import java.util.Optional;

/**
 * How practice goes on with every key. Whatever is kept or worked out is asked of the desk, which
 * gives it back at once.
 */
final class PracticeModel {
  private final PracticeDesk desk;

  PracticeModel(PracticeDesk desk) {
    this.desk = desk;
  }

  /** Whether keys belong to the player's inputs in this phase. */
  static boolean listens(Phase phase) {
    return phase instanceof Phase.Checking
        || (phase instanceof Phase.Running running && inRound(running.run()));
  }

  private static boolean inRound(PracticeRun run) {
    return run.stage() == PracticeRun.Stage.BETWEEN || run.stage() == PracticeRun.Stage.PROMPT;
  }

  /** A key while keys belong to the inputs, or something that happened to the terminal. */
  Phase happened(Phase phase, Key key, long millis) {
    if (phase instanceof Phase.Checking checking) {
      return checking(checking, key, millis);
    }
    if (phase instanceof Phase.Running running) {
      return running(running, key, millis);
    }
    return phase;
  }

  private static Phase checking(Phase.Checking phase, Key key, long millis) {
    ButtonCheck check = phase.check();
    if (key == Key.Named.BACKSPACE || key == Key.Named.INTERRUPT) {
      return new Phase.CheckPaused(check);
    }
    return Signals.of(key).map(s -> checked(check.pressed(s, millis))).orElse(phase);
  }

  private static Phase checked(ButtonCheck check) {
    return check.done() ? new Phase.Checked(check) : new Phase.Checking(check);
  }

  private Phase running(Phase.Running phase, Key key, long millis) {
    PracticeRun run = phase.run();
    if (inRound(run) && (key == Key.Named.BACKSPACE || key == Key.Named.INTERRUPT)) {
      return new Phase.Stopping(phase.signals(), run.after(new Happening.Paused()), false);
    }
    Optional<Happening> happening = happening(key, millis);
    return happening.map(h -> after(phase.signals(), run.after(h))).orElse(phase);
  }

  private static Optional<Happening> happening(Key key, long millis) {
    if (key instanceof Key.Passed) {
      return Optional.of(new Happening.Elapsed(millis));
    }
    if (key instanceof Key.Resized) {
      return Optional.of(new Happening.Disturbed(Happening.What.SIZE));
    }
    if (key instanceof Key.Pasted) {
      return Optional.of(new Happening.Disturbed(Happening.What.PASTE));
    }
    if (key instanceof Key.Focus focus) {
      return focus.here()
          ? Optional.empty()
          : Optional.of(new Happening.Disturbed(Happening.What.WINDOW));
    }
    return Signals.of(key).map(s -> new Happening.Pressed(s, millis));
  }

  /** The terminal is gone: what was finished is kept. */
  Phase closed(Phase phase) {
    if (phase instanceof Phase.Running running) {
      PracticeRun run = running.run().after(new Happening.Disturbed(Happening.What.CLOSED));
      after(running.signals(), run);
    } else if (phase instanceof Phase.Stopping stopping) {
      after(
          stopping.signals(), stopping.run().after(new Happening.Disturbed(Happening.What.CLOSED)));
    } else if (phase instanceof Phase.CheckStopping) {
      stoppedInCheck(StopReason.of(StopSign.WISH));
    }
    return new Phase.Left();
  }

  private Phase after(Map<String, Signal> signals, PracticeRun run) {
    return run.over()
        ? new Phase.Told(run, desk.finished(signals, run))
        : new Phase.Running(signals, run);
  }

  /** Something was taken from the list of the phase. */
  Phase taken(Phase phase, Choice choice, long millis) {
    Choice.Doing doing = choice.doing();
    if (phase instanceof Phase.CheckPaused paused) {
      return checkPaused(paused.check(), doing);
    }
    if (phase instanceof Phase.CheckStopping stopping) {
      return checkStopping(stopping.check(), doing);
    }
    if (phase instanceof Phase.Running running) {
      return inMenu(running.signals(), running.run(), choice, millis);
    }
    if (phase instanceof Phase.Stopping stopping) {
      return inMenu(stopping.signals(), stopping.run(), choice, millis);
    }
    return switch (doing) {
      case BEGIN_CHECK -> new Phase.Checking(ButtonCheck.of(desk.inputs()));
      case USE_KNOWN -> new Phase.Running(desk.known(), desk.run(desk.known()));
      case BEGIN_RUN -> begun(((Phase.Checked) phase).check().signals());
      case TAKE -> new Phase.Told(((Phase.Told) phase).run(), desk.take());
      case KEEP -> new Phase.Told(((Phase.Told) phase).run(), desk.leave());
      default -> new Phase.Left();
    };
  }

  private Phase begun(Map<String, Signal> signals) {
    return new Phase.Running(signals, desk.run(signals));
  }

  private static Phase checkPaused(ButtonCheck check, Choice.Doing doing) {
    return switch (doing) {
      case NOTHING_CAME -> checked(check.nothingCame());
      case ONE_BACK -> new Phase.Checking(check.again());
      case GO_ON_CHECKING -> checked(check);
      case END_CHECK -> new Phase.Checked(check);
      case ASK_STOP -> new Phase.CheckStopping(check, false);
      default -> new Phase.Left();
    };
  }

  private Phase checkStopping(ButtonCheck check, Choice.Doing doing) {
    if (doing.stops()) {
      return stoppedInCheck(StopReason.of(doing.sign()));
    }
    return doing == Choice.Doing.GO_ON
        ? checked(check)
        : new Phase.CheckStopping(check, doing == Choice.Doing.ASK_BODY);
  }

  /** The stop is kept; a check that was broken off is no ground for another day. */
  private Phase stoppedInCheck(StopReason reason) {
    return after(Map.of(), desk.run(Map.of()).after(new Happening.Stopped(reason)));
  }

  private Phase inMenu(Map<String, Signal> signals, PracticeRun run, Choice choice, long millis) {
    Choice.Doing doing = choice.doing();
    if (doing.stops()) {
      return after(signals, run.after(new Happening.Stopped(StopReason.of(doing.sign()))));
    }
    return switch (doing) {
      case PAIN -> after(signals, run.after(new Happening.PainTold(choice.digit(), millis)));
      case GO_ON -> after(signals, run.after(new Happening.Begun(millis)));
      case ASK_BODY -> new Phase.Stopping(signals, run, true);
      case LEAVE -> new Phase.Left();
      default -> new Phase.Stopping(signals, run, false);
    };
  }

  /** Ctrl-C on a page with a list: out, where nothing is lost by it. */
  Phase interrupted(Phase phase) {
    boolean atEase =
        phase instanceof Phase.First
            || phase instanceof Phase.Checked
            || phase instanceof Phase.Told;
    return atEase ? new Phase.Left() : back(phase);
  }

  /** What Backspace does on a page with a list. */
  Phase back(Phase phase) {
    if (phase instanceof Phase.Running running) {
      return new Phase.Stopping(running.signals(), running.run(), false);
    }
    if (phase instanceof Phase.Stopping stopping) {
      return stopping.body()
          ? new Phase.Stopping(stopping.signals(), stopping.run(), false)
          : new Phase.Running(stopping.signals(), stopping.run());
    }
    if (phase instanceof Phase.CheckPaused paused) {
      return checked(paused.check());
    }
    if (phase instanceof Phase.CheckStopping stopping) {
      return stopping.body()
          ? new Phase.CheckStopping(stopping.check(), false)
          : new Phase.CheckPaused(stopping.check());
    }
    return phase instanceof Phase.First || phase instanceof Phase.Checked
        ? new Phase.Left()
        : phase;
  }
}
