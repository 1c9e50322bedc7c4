package closehand.bank;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a kind of game asks for.
 *
 * @param genre its code, such as {@code FPA}
 * @param title plain words
 * @param note its character in a line
 * @param settings what to look for in its menus first
 * @param actions what the player does in it
 * @param basis where the figures come from
 * @param where where it stands in the bank
 */
public record GameProfile(
    String genre,
    String title,
    String note,
    List<String> settings,
    List<Action> actions,
    List<String> basis,
    Where where) {
  public GameProfile {
    settings = List.copyOf(settings);
    actions = List.copyOf(actions);
    basis = List.copyOf(basis);
  }

  /**
   * One thing the player does in the game.
   *
   * @param id such as {@code FPA02}
   * @param name plain words
   * @param perMinute times a minute of active play, where one is known
   * @param style how it is done: tap, hold, drag ...
   * @param holdSeconds how long it is held
   * @param continuous whether it never stops while playing
   * @param urgency 3 within about 0.3 s, 2 within 1 s, 1 within 3 s, 0 no hurry
   * @param importance 3 must, 2 wanted, 1 nice, 0 rarely missed
   * @param pressedWith actions that must work at the same moment
   * @param options what games of this kind often offer for it
   */
  public record Action(
      String id,
      String name,
      OptionalDouble perMinute,
      List<String> style,
      Approach.Span holdSeconds,
      boolean continuous,
      int urgency,
      int importance,
      List<String> pressedWith,
      List<String> options,
      Where where) {
    public Action {
      style = List.copyOf(style);
      pressedWith = List.copyOf(pressedWith);
      options = List.copyOf(options);
    }
  }
}
