package trammel.trade.welding;

/** Where the seam is welded. */
public enum WeldPlace {
  BENCH("bench"),
  VEHICLE("on vehicle");

  private final String title;

  WeldPlace(String title) {
    this.title = title;
  }

  /** Word for a weld list. */
  public String title() {
    return title;
  }
}
