package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.plan.Mixes;
import java.util.ArrayList;
import java.util.List;

/** The suggested controls compared by the plans they allow. */
public final class MixLines {
  private static final int MOST_NAMES = 4;
  private static final int MOST_TOGETHER = 6;
  private static final double PERCENT = 100;

  private MixLines() {}

  /** The comparison of each game, one after the other. */
  public static String of(PageInput input, List<Mixes.Comparison> games, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>(StopNotice.all(input));
    for (Mixes.Comparison game : games) {
      pieces.addAll(game(input.bank(), game));
    }
    pieces.addAll(PlanLines.standing());
    pieces.addAll(FooterLines.of(input));
    return Sheet.text(pieces, glyphs);
  }

  private static List<Piece> game(Bank bank, Mixes.Comparison game) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Controls compared: " + game.best().plan().title()));
    pieces.add(
        Paragraph.of(
            "Each control alone, ranked by the rules first, then by how many of the actions the"
                + " game needs have a place, then by effort."));
    int place = 0;
    for (Mixes.Mix mix : game.alone()) {
      pieces.add(Paragraph.numbered(++place, alone(bank, mix)));
    }
    pieces.addAll(together(bank, game));
    pieces.add(new Gap());
    pieces.add(
        Paragraph.of(
            "The best plan of all: "
                + names(bank, game.best().plan().approaches())
                + ", "
                + game.best().plan().cost()
                + " points a minute."));
    for (Mixes.Added added : game.added()) {
      pieces.add(Paragraph.item(added(bank, added)));
    }
    return pieces;
  }

  /** Combinations, each beside the best of its parts alone. */
  private static List<Piece> together(Bank bank, Mixes.Comparison game) {
    List<Piece> pieces = new ArrayList<>();
    int place = 0;
    for (Mixes.Mix mix : game.together().stream().limit(MOST_TOGETHER).toList()) {
      pieces.add(
          Paragraph.numbered(
              ++place, Phrases.bare(alone(bank, mix)) + beside(game.alone(), mix) + "."));
    }
    if (!pieces.isEmpty()) {
      pieces.add(0, Paragraph.of("Together, ranked in the same way:"));
      pieces.add(0, new Gap());
    }
    return pieces;
  }

  private static String beside(List<Mixes.Mix> alone, Mixes.Mix mix) {
    List<Mixes.Mix> parts =
        alone.stream().filter(a -> mix.approaches().containsAll(a.approaches())).toList();
    int most = parts.stream().mapToInt(Mixes.Mix::mustsPlaced).max().orElse(0);
    if (mix.mustsPlaced() > most) {
      return ", " + (mix.mustsPlaced() - most) + " more than with the best of them alone";
    }
    long least =
        parts.stream()
            .filter(p -> p.mustsPlaced() == most)
            .mapToLong(Mixes.Mix::cost)
            .min()
            .orElse(mix.cost());
    long percent = least == 0 ? 0 : Math.round(PERCENT * (least - mix.cost()) / least);
    return percent > 0 ? ", " + percent + " % fewer than with the best of them alone" : "";
  }

  private static String alone(Bank bank, Mixes.Mix mix) {
    return names(bank, mix.approaches())
        + ": "
        + mix.mustsPlaced()
        + " of "
        + Phrases.count(mix.musts(), "needed action")
        + " "
        + (mix.musts() == 1 ? "has" : "have")
        + " a place"
        + (mix.mustsPlaced() == mix.musts() ? "; " + mix.cost() + " points a minute." : ".");
  }

  private static String added(Bank bank, Mixes.Added added) {
    String name = names(bank, List.of(added.approach()));
    List<String> parts = new ArrayList<>();
    if (!added.broughtIn().isEmpty()) {
      parts.add("brings in " + some(added.broughtIn()));
    }
    if (!added.movedOff().isEmpty()) {
      parts.add("takes " + some(added.movedOff()) + " off other parts of you");
    }
    String cost = added.broughtIn().isEmpty() ? ": " + saved(added) : "";
    return parts.isEmpty() ? name + cost + "." : name + " " + Phrases.and(parts) + cost + ".";
  }

  /** Left-out actions count for so much that a share of the points tells nothing beside them. */
  private static String saved(Mixes.Added added) {
    long saved = added.costWithout() - added.costWith();
    long percent = added.costWithout() == 0 ? 0 : Math.round(PERCENT * saved / added.costWithout());
    return percent > 0
        ? "the plan asks for " + percent + " % fewer points with it"
        : "the plan asks for about as many points without it";
  }

  private static String some(List<String> names) {
    List<String> first =
        names.subList(0, Math.min(MOST_NAMES, names.size())).stream()
            .map(n -> "\"" + n + "\"")
            .toList();
    int more = names.size() - first.size();
    return more > 0 ? String.join(", ", first) + " and " + more + " more" : Phrases.and(first);
  }

  private static String names(Bank bank, List<String> approaches) {
    return Phrases.and(
        approaches.stream()
            .flatMap(a -> bank.approach(a).stream())
            .map(Approach::words)
            .map(Approach.Words::brief)
            .toList());
  }
}
