package trammel.cutting;

/** The stock that is on hand or may be bought does not hold all the pieces asked for. */
public final class StockShortageException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * @param message what is short, by how much, and what to do
   */
  public StockShortageException(String message) {
    super(message);
  }
}
