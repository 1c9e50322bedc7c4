package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.screen.frame.Role;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A7, A8: the usual theme has no colours; the one that has keeps text and ground far apart. */
class ThemeTest {
  @Test
  void onlyTheContrastThemeHasColours() {
    for (Role role : Role.values()) {
      assertTrue(Theme.PLAIN.look(role).colours().isEmpty());
      assertEquals(Look.NONE, Theme.MONO.look(role));
      assertTrue(Theme.CONTRAST.look(role).colours().isPresent());
    }
  }

  @Test
  void everyPairStandsSevenToOneApart() {
    for (Role role : Role.values()) {
      double contrast = Theme.CONTRAST.look(role).colours().orElseThrow().contrast();
      assertTrue(contrast >= 7, role + " has " + contrast);
    }
  }

  @Test
  void theChosenItemStandsOutFromTheOthersByThreeToOne() {
    Colours plain = Theme.CONTRAST.look(Role.PLAIN).colours().orElseThrow();
    Colours chosen = Theme.CONTRAST.look(Role.CHOSEN).colours().orElseThrow();
    assertTrue(Colours.contrast(plain.background(), chosen.background()) >= 3);
  }

  /** WCAG 2.2 says black on white is 21; 4.5 for #767676 on white is the well-known limit. */
  @Test
  void contrastIsThatOfThePublishedFormula() {
    assertEquals(21, Colours.contrast(16, 231), 1e-9);
    assertEquals(1, Colours.contrast(46, 46), 1e-9);
    assertEquals(4.54, Colours.contrast(243, 231), 0.01);
  }

  @Test
  void themesGoByTheirNames() {
    assertEquals(Optional.of(Theme.CONTRAST), Theme.named(" Contrast "));
    assertEquals(Optional.empty(), Theme.named("neon"));
  }
}
