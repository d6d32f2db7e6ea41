package trammel.engine.checks;

/**
 * A check made again with the vehicle at full load.
 *
 * @param empty the check as it is made empty, under the name that it has at full load
 */
record AtFullLoad(Check empty) implements Check {

  @Override
  public String id() {
    return empty.id();
  }

  @Override
  public String title() {
    return empty.title();
  }

  @Override
  public Measure measure() {
    return empty.measure();
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return analysis.fullLoad().isPresent()
        ? empty.read(analysis.fullLoad().get())
        : new Reading.NotApplicable("no load is given");
  }

  @Override
  public String advice() {
    return empty.advice();
  }
}
