package closehand.screen;

import closehand.interview.Interview;
import closehand.interview.Provenance;
import java.util.List;
import java.util.Optional;

/** A book of cases without any case. */
public class NoBook implements CaseBook {
  private static final Opened NOTHING = new Opened(Optional.empty(), List.of("There is no case."));

  @Override
  public List<String> names() {
    return List.of();
  }

  @Override
  public Optional<String> brokenOff() {
    return Optional.empty();
  }

  @Override
  public Opened begin(Provenance.By asker, Interview.Route route, Sealing sealing, char[] own) {
    return NOTHING;
  }

  @Override
  public Found find(String name, char[] passphrase) {
    return new Found.Refused(List.of("There is no case."));
  }

  @Override
  public void putBack() {}

  @Override
  public Opened take(Wish wish) {
    return NOTHING;
  }

  @Override
  public Opened seal(Sealing sealing, char[] own) {
    return NOTHING;
  }

  @Override
  public List<String> look() {
    return List.of();
  }

  @Override
  public List<String> discard() {
    return List.of();
  }

  @Override
  public List<String> print(List<String> lines) {
    return List.of();
  }

  @Override
  public Optional<String> unfit(char[] own) {
    return Optional.empty();
  }

  @Override
  public Opened example() {
    return NOTHING;
  }

  @Override
  public List<String> check() {
    return List.of();
  }

  @Override
  public List<String> writePages(Interview interview) {
    return List.of();
  }

  @Override
  public List<String> keep(Settings settings) {
    return List.of();
  }
}
