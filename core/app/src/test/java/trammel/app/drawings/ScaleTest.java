package trammel.app.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class ScaleTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-3 | 3.5 | 0 | -3 -2 -1 0 1 2 3 4",
        "0 | 0.29 | 0 | 0.00 0.05 0.10 0.15 0.20 0.25 0.30",
        "176 | 217 | 0 | 170 180 190 200 210 220",
        "5 | 5 | 0.8 | 4.6 4.7 4.8 4.9 5.0 5.1 5.2 5.3 5.4",
        "-76.2 | 88.9 | 0 | -100 -50 0 50 100"
      })
  void theAxisRunsFromARoundNumberToARoundNumber(
      double least, double greatest, double span, String labels) {
    Scale scale = Scale.holding(least, greatest, Math.max(span, 1e-9));
    List<String> written = new ArrayList<>();
    for (double tick : scale.ticks()) {
      written.add(scale.label(tick));
    }
    assertEquals(labels, String.join(" ", written));
  }

  @Seeds(300)
  void everyValueLiesOnTheAxisAndTheTicksAreFewAndRound(Draw draw) {
    double one = draw.between(-1e5, 1e5);
    double other = draw.between(-1e5, 1e5);
    double least = Math.min(one, other);
    double greatest = Math.max(one, other);
    Scale scale = Scale.holding(least, greatest, 1e-3);
    double slack = 1e-6 * scale.step();
    assertTrue(scale.from() <= least + slack && scale.to() >= greatest - slack);
    assertTrue(scale.share(least) >= -1e-6 && scale.share(greatest) <= 1 + 1e-6);
    int ticks = scale.ticks().size();
    assertTrue(ticks >= 2 && ticks <= 11, ticks + " ticks");
    double mantissa = scale.step() / Math.pow(10, Math.floor(Math.log10(scale.step()) + 1e-9));
    assertTrue(
        Math.abs(mantissa - 1) < 1e-6
            || Math.abs(mantissa - 2) < 1e-6
            || Math.abs(mantissa - 5) < 1e-6,
        "step " + scale.step());
  }
}
