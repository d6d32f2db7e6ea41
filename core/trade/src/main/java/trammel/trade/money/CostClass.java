package trammel.trade.money;

/** What a cost is for; markup and tax go by it. */
public enum CostClass {
  STEEL("steel"),
  PARTS("parts"),
  SUPPLIES("shop supplies"),
  OUTSIDE("outside work"),
  FREIGHT("freight and charges"),
  LABOUR("labour"),
  OVERHEAD("overhead"),
  CONTINGENCY("contingency"),
  FEES("fees");

  private final String title;

  CostClass(String title) {
    this.title = title;
  }

  /** Word for a cost sheet. */
  public String title() {
    return title;
  }
}
