package trammel.testsupport;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Draws the inputs of one run of a property. The same seed draws the same values in the same order.
 *
 * <p>Faults sit at the ends of ranges, at zero, at round numbers and where two values are equal. So
 * {@link #between}, {@link #whole}, {@link #decimal} and {@link #listOf} draw those more often than
 * chance would, and every eighth seed draws mostly those. {@link #evenly} has no such preference.
 */
public final class Draw {
  private static final int EDGE_SEED_EVERY = 8;
  private static final double EDGES_IN_AN_EDGE_SEED = 0.6;
  private static final double EDGES_OTHERWISE = 0.06;
  private static final double ROUND_NUMBERS = 0.15;
  private static final double CLOSE_TO_AN_EDGE = 0.15;

  /** How many drawn values a failure shows; more are only counted. */
  private static final int SHOWN = 40;

  private final long seed;
  private final SplittableRandom random;
  private final double edges;
  private final List<Object> shown = new ArrayList<>();
  private int count;

  /** A draw that starts at the beginning of this seed. */
  public Draw(long seed) {
    this.seed = seed;
    this.random = new SplittableRandom(seed);
    this.edges = seed % EDGE_SEED_EVERY == 0 ? EDGES_IN_AN_EDGE_SEED : EDGES_OTHERWISE;
  }

  /** The seed that this draw began with. */
  public long seed() {
    return seed;
  }

  /**
   * A number from least to greatest, both included. Often an end, zero or one, often close to
   * these, often a round number.
   *
   * @throws IllegalArgumentException if the range is empty or not finite
   */
  public double between(double least, double greatest) {
    requireRange(least, greatest);
    return noted(unnoted(least, greatest));
  }

  /**
   * A number from least to greatest, each as likely as any other.
   *
   * @throws IllegalArgumentException if the range is empty or not finite
   */
  public double evenly(double least, double greatest) {
    requireRange(least, greatest);
    return noted(even(least, greatest));
  }

  /**
   * A whole number from least to greatest, both included. Often an end, zero or one.
   *
   * @throws IllegalArgumentException if the range is empty
   */
  public int whole(int least, int greatest) {
    return (int) whole((long) least, (long) greatest);
  }

  /**
   * A whole number from least to greatest, both included. Often an end, zero or one.
   *
   * @throws IllegalArgumentException if the range is empty
   */
  public long whole(long least, long greatest) {
    if (least > greatest) {
      throw new IllegalArgumentException(
          "The range " + least + " to " + greatest + " is empty. Put the lesser number first.");
    }
    return noted(unnoted(least, greatest));
  }

  /** Any long: a seed for a source of random numbers that the test brings itself. */
  public long anyLong() {
    return noted(random.nextLong());
  }

  /** A source of random numbers for what takes one. */
  public Random random() {
    return new Random(anyLong());
  }

  /**
   * A decimal with this many places, from least to greatest, both included. Often an end or zero.
   *
   * @throws IllegalArgumentException if the range is empty
   */
  public BigDecimal decimal(String least, String greatest, int places) {
    BigInteger from = new BigDecimal(least).setScale(places).unscaledValue();
    BigInteger to = new BigDecimal(greatest).setScale(places).unscaledValue();
    return BigDecimal.valueOf(whole(from.longValueExact(), to.longValueExact()), places);
  }

  /** True or false, each as likely. */
  public boolean either() {
    return noted(random.nextBoolean());
  }

  /**
   * True with this chance.
   *
   * @param share from 0 (never) to 1 (always)
   */
  public boolean withChance(double share) {
    return noted(random.nextDouble() < share);
  }

  /** One of these, each as likely. */
  @SafeVarargs
  @SuppressWarnings("varargs")
  public final <T> T oneOf(T... choices) {
    return oneOf(List.of(choices));
  }

  /**
   * One of these, each as likely.
   *
   * @throws IllegalArgumentException if there is none
   */
  public <T> T oneOf(List<T> choices) {
    if (choices.isEmpty()) {
      throw new IllegalArgumentException(
          "There is nothing to choose from. Give one choice or more.");
    }
    return noted(choices.get(random.nextInt(choices.size())));
  }

  /** One of the constants of an enumeration, each as likely. */
  public <T extends Enum<T>> T oneOf(Class<T> kind) {
    return oneOf(kind.getEnumConstants());
  }

  /**
   * A list of drawn items. Its size is from least to greatest, often one of these two, and now and
   * then an item is the one before once more.
   */
  public <T> List<T> listOf(int least, int greatest, Function<Draw, T> item) {
    int size = whole(least, greatest);
    List<T> items = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      boolean again = i > 0 && random.nextDouble() < EDGES_OTHERWISE;
      items.add(again ? items.get(i - 1) : item.apply(this));
    }
    return List.copyOf(items);
  }

  /** Some of these in their order, often none or all. */
  public <T> List<T> someOf(List<T> choices) {
    int size = (int) unnoted(0, choices.size());
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < choices.size(); i++) {
      places.add(i);
    }
    Collections.shuffle(places, new Random(random.nextLong()));
    return noted(places.stream().limit(size).sorted().map(choices::get).toList());
  }

  /** Any text of so many characters at most, of every script, with controls and lone surrogates. */
  public String text(int fewest, int most) {
    return characters(fewest, most, this::anyCharacter);
  }

  /** A text of these characters. */
  public String textOf(String alphabet, int fewest, int most) {
    return characters(fewest, most, () -> alphabet.charAt(random.nextInt(alphabet.length())));
  }

  /** What was drawn so far, in order, as a failure shows it. */
  public String drawn() {
    String values = shown.stream().map(Draw::onOneLine).collect(Collectors.joining(", "));
    return count > shown.size() ? values + " and " + (count - shown.size()) + " more" : values;
  }

  @Override
  public String toString() {
    return "seed " + seed;
  }

  private double unnoted(double least, double greatest) {
    double share = random.nextDouble();
    if (share < edges) {
      return edge(least, greatest);
    }
    if (share < edges + (1 - edges) * ROUND_NUMBERS) {
      return roundNumber(least, greatest);
    }
    if (share < edges + (1 - edges) * (ROUND_NUMBERS + CLOSE_TO_AN_EDGE)) {
      return closeToAnEdge(least, greatest);
    }
    return even(least, greatest);
  }

  private double even(double least, double greatest) {
    double share = random.nextDouble();
    return within(least, greatest, least * (1 - share) + greatest * share);
  }

  private double edge(double least, double greatest) {
    double[] edges = {least, greatest, 0, 1, -1};
    double edge = edges[random.nextInt(edges.length)];
    return edge < least || edge > greatest ? (random.nextBoolean() ? least : greatest) : edge;
  }

  private double roundNumber(double least, double greatest) {
    double places = random.nextBoolean() ? 1 : 100;
    return within(least, greatest, Math.rint(even(least, greatest) * places) / places);
  }

  /** From a hundredth to a millionth of the range away from an edge. */
  private double closeToAnEdge(double least, double greatest) {
    double away = (greatest - least) * Math.pow(10, -2 - 4 * random.nextDouble());
    double edge = edge(least, greatest);
    boolean down = edge == greatest || edge != least && random.nextBoolean();
    return within(least, greatest, down ? edge - away : edge + away);
  }

  private long unnoted(long least, long greatest) {
    if (random.nextDouble() < edges) {
      long[] edges = {least, greatest, 0, 1, least + 1, greatest - 1};
      long edge = edges[random.nextInt(edges.length)];
      return edge < least || edge > greatest ? least : edge;
    }
    return greatest == Long.MAX_VALUE
        ? Math.max(least, random.nextLong())
        : random.nextLong(least, greatest + 1);
  }

  private String characters(int fewest, int most, Supplier<Character> next) {
    int length = (int) unnoted((long) fewest, most);
    StringBuilder text = new StringBuilder(length);
    for (int i = 0; i < length; i++) {
      text.append(next.get().charValue());
    }
    return noted(text.toString());
  }

  private char anyCharacter() {
    return switch (random.nextInt(4)) {
      case 0 -> (char) random.nextInt(' ', 0x7f);
      case 1 -> (char) random.nextInt(0, 0x20);
      case 2 -> (char) random.nextInt(0x7f, 0x250);
      default -> (char) random.nextInt(0, 0x10000);
    };
  }

  private <T> T noted(T value) {
    count++;
    if (shown.size() < SHOWN) {
      shown.add(value);
    }
    return value;
  }

  private static double within(double least, double greatest, double value) {
    return Math.max(least, Math.min(greatest, value));
  }

  /** Line breaks and characters that a terminal would act on are written out. */
  private static String onOneLine(Object value) {
    String text = String.valueOf(value);
    StringBuilder line = new StringBuilder();
    text.chars()
        .forEach(
            c ->
                line.append(
                    c < ' ' || c >= 0x7f && c < 0xa0 || Character.isSurrogate((char) c)
                        ? String.format("\\u%04x", c)
                        : String.valueOf((char) c)));
    return value instanceof String ? "\"" + line + "\"" : line.toString();
  }

  private static void requireRange(double least, double greatest) {
    if (!(Double.isFinite(greatest - least) && least <= greatest)) {
      throw new IllegalArgumentException(
          "The range " + least + " to " + greatest + " must be finite, the lesser number first.");
    }
  }
}
