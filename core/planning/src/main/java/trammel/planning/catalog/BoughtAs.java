package trammel.planning.catalog;

/** How something bought enters the cost: each class has its own markup and tax rule. */
public enum BoughtAs {
  /** Stays on the vehicle. */
  PART,
  /** Used up in the work. */
  SUPPLY,
  /** Done by another shop. */
  OUTSIDE_WORK
}
