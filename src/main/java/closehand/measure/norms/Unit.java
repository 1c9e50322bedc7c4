package closehand.measure.norms;

/** Units of strength. */
public enum Unit {
  /** Kilograms, as dynamometers show them. */
  KILOGRAM("kg", 1),
  /** Pounds: 0.45359237 kg (international yard and pound agreement, 1959). */
  POUND("lb", 0.45359237),
  /** Newtons. */
  NEWTON("N", 1 / 9.80665);

  private final String code;
  private final double kilograms;

  Unit(String code, double kilograms) {
    this.code = code;
    this.kilograms = kilograms;
  }

  /** The name in files. */
  public String code() {
    return code;
  }

  /** The same amount in kilograms. */
  public double toKilograms(double amount) {
    return amount * kilograms;
  }

  /** The same amount in another unit. */
  public double to(Unit other, double amount) {
    return amount * kilograms / other.kilograms;
  }
}
