package trammel.assembly;

/** Where a placed part comes from. */
public enum PartKind {
  /** Cut from plate. */
  PLATE("plate"),
  /** Sawn from a section. */
  TUBE("tube"),
  /** Bought. */
  BOUGHT("bought"),
  /** A bolt with its nut and washers. */
  BOLT("bolt"),
  /** Of the vehicle itself: rails, axle, wheels, shaft, what stands in the way. */
  VEHICLE("vehicle"),
  /** A tool of the fit-up, taken off again. */
  TOOL("tool");

  private final String word;

  PartKind(String word) {
    this.word = word;
  }

  /** The word for it in files. */
  public String word() {
    return word;
  }

  /** True for what the job adds to the vehicle. */
  public boolean added() {
    return this != VEHICLE && this != TOOL;
  }
}
