package closehand.report;

import closehand.bank.Approach;
import closehand.plan.Mixes.Mix;
import java.util.List;
import java.util.Optional;

/** What tells ideas apart that are equally good by the rules: needed actions first, then effort. */
final class EqualWords {
  private static final List<String> SMALL =
      List.of(
          "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  /** A smaller difference in effort is none that anybody could feel; common practice. */
  private static final double NOTICEABLE = 1.05;

  private EqualWords() {}

  /** How ideas are ranked, for a page on which plans told some apart; empty otherwise. */
  static String ranking(PageInput input) {
    return input.equal().groups().isEmpty()
        ? ""
        : "Ranked by the rules first. Where they make no difference, the one that alone has a place"
            + " for more of the actions that your games need comes first, then the one that asks"
            + " less of your body.";
  }

  /** One sentence about an idea that others equal; empty where there is nothing to tell. */
  static String sentence(PageInput input, Approach approach) {
    Optional<List<Mix>> group = input.equal().group(approach.id());
    if (group.isEmpty() || group.get().get(0).musts() == 0) {
      return "";
    }
    List<Mix> all = group.get();
    int place = place(all, approach.id());
    Mix mine = all.get(place);
    return place == 0 ? first(input, mine, all.get(1)) : after(input, mine, all.get(place - 1));
  }

  private static int place(List<Mix> group, String approach) {
    for (int i = 0; i < group.size(); i++) {
      if (group.get(i).approaches().contains(approach)) {
        return i;
      }
    }
    throw new IllegalArgumentException("not of this group");
  }

  private static String first(PageInput input, Mix mine, Mix next) {
    if (mine.mustsPlaced() == 0) {
      return "";
    }
    String both = name(input, next) + " works equally well by the rules; ";
    if (mine.mustsPlaced() > next.mustsPlaced()) {
      return both + "with this one alone " + placed(mine) + ", with that one " + few(next) + ".";
    }
    String together = both + "with either alone " + placed(mine);
    return isEasier(mine, next) ? together + ", and this one asks less of you." : together + ".";
  }

  private static String after(PageInput input, Mix mine, Mix before) {
    String equal = "By the rules as good as " + Phrases.lower(name(input, before)) + "; ";
    if (mine.mustsPlaced() == 0) {
      return equal + "it helps beside another control, not alone.";
    }
    if (mine.mustsPlaced() < before.mustsPlaced()) {
      return equal + "with this one alone " + placed(mine) + ".";
    }
    return isEasier(before, mine)
        ? equal + "with either alone " + placed(mine) + ", but this one asks more of you."
        : equal + "with either alone " + placed(mine) + ".";
  }

  private static boolean isEasier(Mix one, Mix other) {
    return one.cost() * NOTICEABLE < other.cost();
  }

  private static String placed(Mix mix) {
    String of =
        mix.mustsPlaced() == mix.musts()
            ? all(mix.musts())
            : few(mix) + " of " + number(mix.musts(), mix.musts());
    String have = mix.mustsPlaced() == 1 ? "has" : "have";
    String actions =
        mix.musts() == 1 ? " action that your games need " : " actions that your games need ";
    return of + actions + have + " a place";
  }

  private static String all(int musts) {
    return musts == 1 ? "the one" : "all " + number(musts, musts);
  }

  private static String few(Mix mix) {
    return number(mix.mustsPlaced(), mix.musts());
  }

  /** In words, unless what it is counted among needs figures. */
  private static String number(int count, int among) {
    return among < SMALL.size() ? SMALL.get(count) : Integer.toString(count);
  }

  private static String name(PageInput input, Mix mix) {
    return input
        .bank()
        .approach(mix.approaches().get(0))
        .map(Approach::words)
        .map(Approach.Words::brief)
        .map(Phrases::upper)
        .orElse("Another");
  }
}
