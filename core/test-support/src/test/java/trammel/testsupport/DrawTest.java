package trammel.testsupport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class DrawTest {

  @Test
  void theSameSeedDrawsTheSameAndAnotherSeedDoesNot() {
    assertEquals(everyKind(new Draw(17)), everyKind(new Draw(17)));
    assertNotEquals(everyKind(new Draw(17)), everyKind(new Draw(18)));
  }

  @Test
  void theEndsZeroAndOneAreReallyDrawn() {
    Set<Double> numbers = values(300, draw -> draw.between(-2.5, 70.5));
    assertTrue(numbers.containsAll(List.of(-2.5, 70.5, 0.0, 1.0, -1.0)), () -> "" + numbers);
    Set<Integer> wholes = values(300, draw -> draw.whole(-300, 9000));
    assertTrue(wholes.containsAll(List.of(-300, 9000, 0, 1)), () -> "" + wholes);
    Set<BigDecimal> decimals = values(300, draw -> draw.decimal("0", "900", 4));
    assertTrue(decimals.contains(new BigDecimal("0.0000")), () -> "" + decimals);
    assertTrue(decimals.contains(new BigDecimal("900.0000")), () -> "" + decimals);
  }

  @Test
  void everyPairOfEndsIsDrawnTogether() {
    Set<List<Double>> pairs =
        values(1000, draw -> List.of(draw.between(2, 9), draw.between(20, 90)));
    for (double first : new double[] {2, 9}) {
      for (double second : new double[] {20, 90}) {
        assertTrue(pairs.contains(List.of(first, second)), () -> first + " with " + second);
      }
    }
  }

  @Test
  void everythingLiesInItsRangeAndMostOfItNotOnAnEnd() {
    List<Double> numbers =
        LongStream.rangeClosed(1, 2000).mapToObj(s -> new Draw(s).between(-3, 40)).toList();
    assertTrue(numbers.stream().allMatch(n -> n >= -3 && n <= 40));
    long tenths = numbers.stream().map(n -> Math.floor((n + 3) / 4.3)).distinct().count();
    assertTrue(tenths >= 10, "each tenth of the range is drawn");
    long onAnEnd = numbers.stream().filter(n -> n == -3 || n == 40).count();
    assertTrue(onAnEnd > 40 && onAnEnd < 400, () -> onAnEnd + " of 2000 on an end");
  }

  @Test
  void evenDrawsHaveTheMeanAndSpreadOfAUniformNumber() {
    // A uniform number over 0 to 12 has the mean 6 and the variance 12² / 12 = 12 (from memory).
    double[] numbers =
        LongStream.rangeClosed(1, 4000).mapToDouble(s -> new Draw(s).evenly(0, 12)).toArray();
    double mean = java.util.Arrays.stream(numbers).average().orElseThrow();
    double variance =
        java.util.Arrays.stream(numbers).map(n -> (n - mean) * (n - mean)).average().orElseThrow();
    assertEquals(6, mean, 0.2);
    assertEquals(12, variance, 0.5);
  }

  @Test
  void listsAreOfEverySizeAndSomeHoldTheSameItemTwice() {
    Set<Integer> sizes = values(300, draw -> draw.listOf(0, 5, d -> d.either()).size());
    assertEquals(Set.of(0, 1, 2, 3, 4, 5), sizes);
    assertTrue(
        values(100, draw -> draw.listOf(2, 6, d -> d.anyLong())).stream()
            .anyMatch(list -> Set.copyOf(list).size() < list.size()));
  }

  @Test
  void subsetsKeepTheOrderAndReachFromNoneToAll() {
    List<String> all = List.of("a", "b", "c", "d");
    Set<List<String>> some = values(600, draw -> draw.someOf(all));
    assertEquals(16, some.size(), "every subset of four");
    assertTrue(some.stream().allMatch(list -> list.equals(list.stream().sorted().toList())));
  }

  @Test
  void textsHoldLettersControlsAndLoneSurrogates() {
    String all = String.join("", values(200, draw -> draw.text(0, 20)));
    assertTrue(all.chars().anyMatch(c -> c >= 'a' && c <= 'z'));
    assertTrue(all.indexOf('\n') >= 0 && all.indexOf('\0') >= 0);
    assertTrue(all.chars().anyMatch(c -> Character.isSurrogate((char) c)));
    assertTrue(values(50, d -> d.textOf("ab", 1, 6)).stream().allMatch(t -> t.matches("[ab]+")));
  }

  @Test
  void everyConstantOfAnEnumerationIsChosen() {
    assertEquals(Set.of(Thread.State.values()), values(100, d -> d.oneOf(Thread.State.class)));
  }

  @Test
  void rangesTheWrongWayRoundAreRefusedWithTheirNumbers() {
    Draw draw = new Draw(1);
    String message =
        assertThrows(IllegalArgumentException.class, () -> draw.between(3, 2)).getMessage();
    assertTrue(message.contains("3.0 to 2.0"), message);
    assertThrows(IllegalArgumentException.class, () -> draw.whole(3, 2));
    assertThrows(IllegalArgumentException.class, () -> draw.evenly(0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> draw.oneOf(List.of()));
  }

  private static <T> Set<T> values(int seeds, Function<Draw, T> drawn) {
    return LongStream.rangeClosed(1, seeds)
        .mapToObj(seed -> drawn.apply(new Draw(seed)))
        .collect(Collectors.toSet());
  }

  private static List<Object> everyKind(Draw draw) {
    return List.of(
        draw.between(0, 5),
        draw.evenly(0, 5),
        draw.whole(0, 500),
        draw.anyLong(),
        draw.decimal("0", "9", 3),
        draw.listOf(1, 9, d -> d.text(0, 5)),
        draw.someOf(List.of(1, 2, 3, 4, 5, 6)),
        draw.oneOf(1, 2, 3),
        draw.random().nextInt());
  }
}
