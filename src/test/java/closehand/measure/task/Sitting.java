package closehand.measure.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.TaskBook;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** A run told step by step, with a clock that only moves when it is told to. */
final class Sitting {
  static final Bank BANK = bank();
  static final TaskBook BOOK = BANK.tasks().orElseThrow();
  private static final long SECOND = 1_000_000_000L;
  private static final long MILLI = 1_000_000L;

  private TaskRun now;
  private long clock;

  private Sitting(TaskRun start, long clock) {
    this.now = start;
    this.clock = clock;
  }

  private static Bank bank() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static TaskSetup setup(String key, boolean onCall) {
    return new TaskSetup(
        BOOK.task(key).orElseThrow(),
        BOOK,
        onCall,
        Provenance.By.VOLUNTEER,
        List.of(),
        Optional.of(2.0),
        0,
        0,
        "afternoon",
        25,
        /* keysCanBeTimed= */ true);
  }

  static Sitting of(TaskSetup setup) {
    long start = 5_000 * SECOND;
    return new Sitting(TaskRun.begin(setup, start), start);
  }

  /** A task in the room, up to the choice of who counts or to the first go. */
  static Sitting inTheRoom(String key) {
    return of(setup(key, /* onCall= */ false)).prepare();
  }

  Sitting prepare() {
    next();
    for (int i = 0; i < now.setup().assurances().size(); i++) {
      yes();
    }
    return pick(0).pick(0);
  }

  /** T1 with the keyboard counting, the practice done, ready for a go that counts. */
  static Sitting tappingByKeys() {
    Sitting sitting = inTheRoom("T1.L.I").pick(1).next();
    return sitting.tap(300, 330, 310).wait(10).pain(2).expect(Step.Ready.class);
  }

  TaskRun now() {
    return now;
  }

  Sitting send(TaskMessage message) {
    now = now.after(message);
    return this;
  }

  Sitting next() {
    return send(new TaskMessage.Next(clock));
  }

  Sitting yes() {
    return send(new TaskMessage.Say(true));
  }

  Sitting no() {
    return send(new TaskMessage.Say(false));
  }

  Sitting pick(int choice) {
    return send(new TaskMessage.Pick(choice));
  }

  Sitting number(int number) {
    return send(new TaskMessage.Number(number));
  }

  Sitting pain(int points) {
    expect(Step.PainNow.class);
    return number(points);
  }

  /** One tap now, then one after each of these gaps in milliseconds. */
  Sitting tap(long... gaps) {
    key("a");
    for (long gap : gaps) {
      clock += gap * MILLI;
      key("a");
    }
    return this;
  }

  Sitting key(String key) {
    return send(new TaskMessage.Key(key, clock));
  }

  /** Time passes and is told when it has. */
  Sitting wait(int seconds) {
    clock += seconds * SECOND;
    return send(new TaskMessage.Clock(clock));
  }

  /** One go counted by somebody. */
  Sitting go(int count) {
    return next().wait(10).number(count);
  }

  Sitting expect(Class<? extends Step> step) {
    assertInstanceOf(step, now.step());
    return this;
  }

  Sitting expectStopped(String id) {
    assertEquals(new Step.Stopped(id), now.step());
    return this;
  }

  Sitting expectSaid(String part) {
    String all = String.join(" ", TaskWords.of(now).paragraphs());
    assertTrue(all.contains(part), all);
    return this;
  }

  Message.EndTask ended() {
    return now.ended().orElseThrow();
  }
}
