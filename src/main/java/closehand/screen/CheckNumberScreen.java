package closehand.screen;

import closehand.bank.Field;
import closehand.interview.Value;
import closehand.interview.Wording;
import closehand.screen.view.Block;

/**
 * Asks once more whether a number is right, after as many figures as fit; so digits alone are
 * enough.
 *
 * @param field what it answers
 * @param value the number
 */
record CheckNumberScreen(Field field, Value value) implements Screen {
  @Override
  public Shown shown(ScreenModel model) {
    Shown.Builder check = new Shown.Builder("Is this number right?");
    check.say(field.label());
    check.add(Block.strong(Wording.of(field.type(), value) + "."));
    check.gap();
    check.offer(1, "Yes, keep it", new Act.Give(value));
    check.offer(2, "No, type it again", new Act.Close());
    Answers.end(check);
    return check.build();
  }
}
