package closehand.screen;

import java.util.List;
import java.util.Optional;

/**
 * The door to cases: begins, finds, takes, seals and discards them, with whatever passphrase that
 * needs. Every method gives the model after it; a case that was opened is handed over once.
 */
final class Door {
  private final CaseBook book;
  private final Secrets secrets = new Secrets();
  private Optional<Wish> wanted = Optional.empty();
  private Optional<CaseBook.Holding> opened = Optional.empty();

  Door(CaseBook book) {
    this.book = book;
  }

  /** The case that was opened since this was asked last. */
  Optional<CaseBook.Holding> opened() {
    Optional<CaseBook.Holding> one = opened;
    opened = Optional.empty();
    return one;
  }

  /** Forgets every passphrase. */
  void forget() {
    secrets.forget();
  }

  /** A case that was looked up elsewhere. */
  ScreenModel opening(ScreenModel model, String name, CaseBook.Found found, Optional<Wish> wish) {
    wanted = wish;
    return found(model, name, found);
  }

  /** With the case that was opened at hand; why not, where it was not. */
  ScreenModel entered(ScreenModel model, CaseBook.Opened one, boolean words) {
    if (one.holding().isEmpty()) {
      return model.told("This case", one.sentences());
    }
    opened = one.holding();
    CaseBook.Holding holding = one.holding().get();
    return words
        ? model.sealed(holding.desk(), holding.interview(), one.sentences())
        : model.holding(holding.desk(), holding.interview(), one.sentences());
  }

  /** Carries out what has to do with cases and passphrases; nothing for everything else. */
  Optional<ScreenModel> carryOut(ScreenModel model, Effect effect) {
    if (effect instanceof Effect.Begin begin) {
      return Optional.of(begun(model, begin, new char[0]));
    }
    if (effect instanceof Effect.Open open) {
      return Optional.of(found(model, open.name(), book.find(open.name(), new char[0])));
    }
    if (effect instanceof Effect.PutBack) {
      book.putBack();
      return Optional.of(model);
    }
    if (effect instanceof Effect.Take take) {
      return Optional.of(taken(model, take.wish()));
    }
    if (effect instanceof Effect.Seal seal) {
      CaseBook.Opened one = book.seal(seal.sealing(), new char[0]);
      return Optional.of(entered(model, one, seal.sealing() == Sealing.DRAWN));
    }
    return typed(model, effect);
  }

  private Optional<ScreenModel> typed(ScreenModel model, Effect effect) {
    if (effect instanceof Effect.SecretTyped typed) {
      secrets.line().type(typed.characters());
    } else if (effect instanceof Effect.SecretShortened) {
      secrets.line().takeBack();
    } else if (effect instanceof Effect.SecretForgotten) {
      secrets.forget();
    } else if (effect instanceof Effect.SecretTaken
        && model.top().screen() instanceof SecretScreen screen) {
      ScreenModel[] next = {model};
      secrets.using(characters -> next[0] = taken(model, screen, characters));
      return Optional.of(next[0]);
    } else {
      return Optional.empty();
    }
    return Optional.of(model);
  }

  private ScreenModel begun(ScreenModel model, Effect.Begin begin, char[] own) {
    Sealing sealing = begin.sealing();
    CaseBook.Opened one = book.begin(begin.asker(), begin.route(), sealing, own);
    return entered(model, one, sealing == Sealing.DRAWN);
  }

  private ScreenModel taken(ScreenModel model, Wish wish) {
    return switch (wish) {
      case LOOK -> model.told("Only to look at", book.look());
      case DISCARD -> {
        List<String> sentences = book.discard();
        yield model.restarted(book.names()).told("Discard a case", sentences);
      }
      default -> entered(model, book.take(wish), /* words= */ false);
    };
  }

  private ScreenModel found(ScreenModel model, String name, CaseBook.Found found) {
    if (found instanceof CaseBook.Found.Case one) {
      Optional<Wish> wish = wanted.filter(one.wishes()::contains);
      wanted = Optional.empty();
      ScreenModel clear = model.withoutSecrets();
      return wish.map(w -> taken(clear, w))
          .orElseGet(() -> clear.pushing(new CaseScreen(name, one)));
    }
    if (found instanceof CaseBook.Found.Refused refused) {
      return model.withoutSecrets().told("This case", refused.sentences());
    }
    return model.top().screen() instanceof SecretScreen typed
        ? again(model, typed, SecretScreen.Step.OPEN, "Wrong passphrase, or the file is damaged.")
        : model.pushing(SecretScreen.opening(name));
  }

  private static ScreenModel again(
      ScreenModel model, SecretScreen screen, SecretScreen.Step step, String refusal) {
    ScreenModel fresh = model.swapping(screen.at(step));
    return fresh.saying(refusal.isEmpty() ? Said.NOTHING : Said.refused(refusal));
  }

  private ScreenModel taken(ScreenModel model, SecretScreen screen, char[] typed) {
    return switch (screen.step()) {
      case OPEN -> found(model, screen.of(), book.find(screen.of(), typed));
      case FIRST -> {
        Optional<String> unfit = book.unfit(typed);
        if (unfit.isEmpty()) {
          secrets.remember(typed);
        }
        SecretScreen.Step next =
            unfit.isEmpty() ? SecretScreen.Step.AGAIN : SecretScreen.Step.FIRST;
        yield again(model, screen, next, unfit.orElse(""));
      }
      case AGAIN ->
          secrets.sameAsBefore(typed)
              ? sealed(model, screen.seal().orElseThrow().kept(Sealing.OWN), typed)
              : again(model, screen, SecretScreen.Step.FIRST, "The two are not the same.");
    };
  }

  private ScreenModel sealed(ScreenModel model, Effect wish, char[] own) {
    ScreenModel clear = model.withoutSecrets();
    return wish instanceof Effect.Begin begin
        ? begun(clear, begin, own)
        : entered(clear, book.seal(Sealing.OWN, own), /* words= */ false);
  }
}
