package trammel.reading.quantity;

/** Reads quantities as the shop writes them. */
public final class Quantities {
  private Quantities() {}

  /**
   * The value of a written quantity in the inside unit of its kind.
   *
   * <p>Understood: decimals ({@code 29.5in}), inch fractions ({@code 29 1/2 in}, {@code 29-1/2"},
   * {@code 3/16 in}), feet and inches ({@code 5' 3 1/2"}), a sign in front, and every name in
   * {@link Unit}. A bare number takes the unit system. Anything that could be read in two ways is
   * refused.
   *
   * @throws QuantityFormatException if the text is not one quantity of this kind
   */
  public static double parse(String text, QuantityKind kind, UnitSystem system) {
    return new QuantityScanner(text, kind, system).quantity();
  }
}
