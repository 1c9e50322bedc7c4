package closehand.screen.frame;

import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** One thing on the screen, then another, without the terminal being given back between them. */
public final class InTurn implements Showing {
  private final Supplier<Optional<Showing>> following;
  private Showing now;
  private boolean last;

  /**
   * Begins with the first.
   *
   * @param following what comes after it, asked once it is over; nothing to end there
   */
  public InTurn(Showing first, Supplier<Optional<Showing>> following) {
    this.now = first;
    this.following = following;
  }

  private void turn() {
    if (now.over() && !last) {
      last = true;
      following.get().ifPresent(next -> now = next);
    }
  }

  @Override
  public Frame frame(ScreenSize size) {
    return now.frame(size);
  }

  @Override
  public void press(Key key) {
    press(key, 0);
  }

  @Override
  public void press(Key key, long millis) {
    now.press(key, millis);
    turn();
  }

  @Override
  public long waitMillis(long millis) {
    return now.waitMillis(millis);
  }

  @Override
  public Set<Report> reports() {
    return now.reports();
  }

  @Override
  public boolean over() {
    return now.over();
  }

  @Override
  public boolean busy() {
    return now.busy();
  }

  @Override
  public void work() {
    now.work();
    turn();
  }

  @Override
  public Guards guards() {
    return now.guards();
  }

  @Override
  public boolean repeats(Key key) {
    return now.repeats(key);
  }
}
