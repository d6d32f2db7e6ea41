package trammel.trade.plates;

/** An opening of any closed shape. */
public record Window(Loop loop) implements Hole {
  @Override
  public Window placed(Placement placement) {
    return new Window(loop.placed(placement));
  }
}
