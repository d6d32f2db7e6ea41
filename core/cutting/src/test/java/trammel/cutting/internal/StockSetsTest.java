package trammel.cutting.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class StockSetsTest {
  /** 10 from 5 (any number), 3 (two of them) and 2 (any number), by hand. */
  @Test
  void everySetOfOneTotalIsHandedOverOnce() {
    StockSets sets = new StockSets(new long[] {5, 3, 2, 0}, new int[] {many(), 2, many(), 1});
    List<String> found = new ArrayList<>();
    sets.at(
        10,
        set -> {
          found.add(Arrays.toString(set));
          return true;
        });
    assertEquals(List.of("[0, 0]", "[0, 1, 2]", "[1, 1, 2, 2]", "[2, 2, 2, 2, 2]"), found);
  }

  @Test
  void noMoreAreMadeThanAreWanted() {
    List<int[]> found = new ArrayList<>();
    new StockSets(new long[] {1, 2}, new int[] {many(), many()})
        .at(
            9,
            set -> {
              found.add(set);
              return found.size() < 2;
            });
    assertEquals(2, found.size());
  }

  private static int many() {
    return Integer.MAX_VALUE;
  }
}
