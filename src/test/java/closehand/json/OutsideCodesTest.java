package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.FactType;
import closehand.bank.Field;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.junit.jupiter.api.Test;

/**
 * Codes of outside standards in the core bank, against copies of those standards that others keep.
 */
class OutsideCodesTest {
  /** The list kept with Linux' usbutils, section HUT: USB-IF HID Usage Tables. */
  private static final Path USB_IDS = Path.of("/var/lib/usbutils/usb.ids");

  private static Bank bank() throws IOException {
    return BankReader.read(new EmbeddedBank(), BankReader.Extent.WHOLE).bank().orElseThrow();
  }

  @Test
  void everyUnitIsUcum() throws IOException, UcumException {
    UcumEssenceService ucum;
    try (InputStream essence = OutsideCodesTest.class.getResourceAsStream("/ucum-essence.xml")) {
      ucum = new UcumEssenceService(essence);
    }
    Set<String> units = new TreeSet<>();
    for (Field field : bank().questionnaire().fieldsByFact().values()) {
      if (field.type() instanceof FactType.Amount amount && !amount.unit().isEmpty()) {
        units.add(amount.unit());
      }
    }
    assertFalse(units.isEmpty());
    for (String unit : units) {
      assertEquals(null, ucum.validate(unit), unit);
    }
    assertTrue(ucum.validate("minutes") != null, "the checker tells wrong units");
  }

  @Test
  void everyUsbUsageIsInTheUsageTables() throws IOException {
    assumeTrue(Files.isReadable(USB_IDS), "usb.ids is not installed here");
    Set<String> known = usages();
    assertTrue(known.contains("07:2c"), "keyboard space");
    List<String> unknown = new ArrayList<>();
    for (Approach approach : bank().approaches()) {
      for (Approach.Input input : approach.inputs()) {
        String usage = input.usage().toLowerCase(Locale.ROOT);
        // The list names buttons 1 to 5 only; the tables say that button n is usage n.
        if (!usage.isEmpty() && !usage.startsWith("09:") && !known.contains(usage)) {
          unknown.add(approach.id() + " " + input.id() + " " + usage);
        }
      }
    }
    assertEquals(List.of(), unknown);
  }

  private static Set<String> usages() throws IOException {
    Set<String> known = new HashSet<>();
    String page = "";
    for (String line : Files.readAllLines(USB_IDS, StandardCharsets.ISO_8859_1)) {
      if (line.startsWith("HUT ")) {
        page = line.substring(4, 6);
      } else if (!page.isEmpty() && line.startsWith("\t")) {
        String usage = line.strip().split("\\s", 2)[0];
        known.add(page + ":" + (usage.length() > 2 ? usage.substring(usage.length() - 2) : usage));
      } else if (!line.startsWith("#") && !line.isBlank()) {
        page = "";
      }
    }
    return known;
  }
}
