package trammel.engine.quantity;

/** Two phrases, the second left out where the first says it already. */
record PhrasePair(Phrase first, Phrase second) implements Phrase {
  PhrasePair {
    Given.present("first phrase", first, "Give both.");
    Given.present("second phrase", second, "Give both.");
  }

  @Override
  public String in(ReaderUnits units) {
    String one = first.in(units);
    String other = second.in(units);
    return one.contains(other) ? one : one + "; " + other;
  }

  @Override
  public String toString() {
    return in(InsideUnits.INSIDE);
  }
}
