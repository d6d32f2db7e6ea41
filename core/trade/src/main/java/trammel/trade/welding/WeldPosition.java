package trammel.trade.welding;

/** How the seam lies while it is welded. */
public enum WeldPosition {
  FLAT("flat"),
  HORIZONTAL("horizontal"),
  VERTICAL("vertical"),
  OVERHEAD("overhead");

  private final String title;

  WeldPosition(String title) {
    this.title = title;
  }

  /** Word for a weld list. */
  public String title() {
    return title;
  }
}
