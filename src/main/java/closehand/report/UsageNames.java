package closehand.report;

import java.util.List;
import java.util.Locale;

/**
 * Plain names of USB HID usages.
 *
 * <p>Numbers and names follow the HID Usage Tables of the USB Implementers' Forum: page 01 generic
 * desktop, 02 simulation, 07 keyboard, 09 buttons.
 */
final class UsageNames {
  private static final int FIRST_LETTER = 0x04;
  private static final int LAST_LETTER = 0x1d;
  private static final int FIRST_DIGIT = 0x1e;
  private static final int LAST_DIGIT = 0x27;
  private static final int FIRST_FUNCTION_KEY = 0x3a;
  private static final int LAST_FUNCTION_KEY = 0x45;

  private UsageNames() {}

  /** The function keys, which games seldom use: {@code 07:3a} to {@code 07:45}. */
  static List<String> spareKeys() {
    return java.util.stream.IntStream.rangeClosed(FIRST_FUNCTION_KEY, LAST_FUNCTION_KEY)
        .mapToObj(u -> String.format(Locale.ROOT, "07:%02x", u))
        .toList();
  }

  /** The name of a usage written as page:usage in hexadecimal; the code itself if not known. */
  static String of(String usage) {
    if (usage.length() < 5) {
      return usage;
    }
    int number = Integer.parseInt(usage.substring(3), 16);
    return switch (usage.substring(0, 2)) {
      case "07" -> key(number, usage);
      case "09" -> "mouse button " + number;
      case "01" -> desktop(number, usage);
      case "02" ->
          switch (number) {
            case 0xc4 -> "accelerator pedal";
            case 0xc5 -> "brake pedal";
            default -> usage;
          };
      default -> usage;
    };
  }

  private static String key(int number, String usage) {
    if (number >= FIRST_LETTER && number <= LAST_LETTER) {
      return "key " + (char) ('A' + number - FIRST_LETTER);
    }
    if (number >= FIRST_DIGIT && number <= LAST_DIGIT) {
      return "key " + (number - FIRST_DIGIT + 1) % 10;
    }
    if (number >= FIRST_FUNCTION_KEY && number <= LAST_FUNCTION_KEY) {
      return "key F" + (number - FIRST_FUNCTION_KEY + 1);
    }
    return switch (number) {
      case 0x2c -> "space bar";
      case 0x2d -> "key -";
      case 0x2e -> "key =";
      default -> usage;
    };
  }

  private static String desktop(int number, String usage) {
    return switch (number) {
      case 0x3d -> "start button";
      case 0x3e -> "select button";
      case 0x90 -> "direction pad up";
      case 0x91 -> "direction pad down";
      case 0x92 -> "direction pad right";
      case 0x93 -> "direction pad left";
      default -> usage;
    };
  }
}
