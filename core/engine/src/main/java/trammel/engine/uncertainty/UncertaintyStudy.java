package trammel.engine.uncertainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Layout;
import trammel.engine.quantity.Given;

/**
 * Tries a layout on many vehicles whose figures are off within their tolerances, each independently
 * of the others and normally distributed, and tells how often each check fails. The same seed gives
 * the same answer on any number of processors.
 */
public final class UncertaintyStudy {
  /** Fewer samples than this say too little. */
  public static final int FEWEST_SAMPLES = 100;

  /** More than this take minutes and say no more. */
  public static final int MOST_SAMPLES = 100_000;

  /** A share below this is left out of what matters. */
  private static final double LEAST_SHARE = 0.01;

  private static final int MOST_WORKERS = 2;

  private final Judge judge;
  private final List<Figure> figures;
  private final int workers;

  /**
   * @param judge makes the checks
   * @param figures what is uncertain, each with a name of its own
   * @throws IllegalArgumentException if two figures share a name
   */
  public UncertaintyStudy(Judge judge, List<Figure> figures) {
    this(judge, figures, Math.min(MOST_WORKERS, Runtime.getRuntime().availableProcessors()));
  }

  UncertaintyStudy(Judge judge, List<Figure> figures, int workers) {
    this.judge = judge;
    this.figures = List.copyOf(figures);
    this.workers = workers;
    Set<String> names = new HashSet<>();
    for (Figure figure : figures) {
      if (!names.add(figure.name())) {
        throw new IllegalArgumentException(
            "two uncertain figures are called "
                + figure.name()
                + "; each needs a name of its own. Rename one.");
      }
    }
  }

  /**
   * The chances of the checks.
   *
   * @param layout the layout with every figure as it was taken to be
   * @param samples how many vehicles to try, 100 to 100 000
   * @param seed any number; the same one gives the same answer
   * @throws IllegalArgumentException if the number of samples is outside its range
   */
  public UncertaintyResult run(Layout layout, int samples, long seed) {
    Given.within("number of samples", samples, FEWEST_SAMPLES, MOST_SAMPLES);
    SampleTable nominal = new SampleTable(judge, 1);
    nominal.read(0, layout);
    SampleTable table = new SampleTable(judge, samples);
    shared(samples, sample -> draw(layout, table, sample, seed));
    SampleTable alone = new SampleTable(judge, 2 * figures.size());
    shared(2 * figures.size(), sample -> alone(layout, alone, sample));
    List<CheckChance> chances = new ArrayList<>();
    for (int check = 0; check < judge.checks().size(); check++) {
      if (nominal.has(0, check)) {
        chances.add(chance(check, nominal, table, alone));
      }
    }
    chances.sort(
        Comparator.comparingDouble(CheckChance::stopShare)
            .thenComparingDouble(CheckChance::notGoodShare)
            .reversed());
    return new UncertaintyResult(samples, seed, impossible(table), chances);
  }

  private void draw(Layout layout, SampleTable table, int sample, long seed) {
    NormalDraws draws = new NormalDraws(seed, sample);
    double[] amounts = new double[figures.size()];
    for (int i = 0; i < amounts.length; i++) {
      amounts[i] = draws.next() * figures.get(i).standardDeviation();
    }
    try {
      Layout built = layout;
      for (int i = 0; i < amounts.length; i++) {
        built = figures.get(i).effect().apply(built, amounts[i]);
      }
      table.read(sample, built);
    } catch (IllegalArgumentException | IllegalStateException impossible) {
      // The engine says why no such vehicle can stand; the sample counts as a failure.
      table.impossible(sample);
    }
  }

  /** Each figure alone, one standard deviation more and one less. */
  private void alone(Layout layout, SampleTable table, int sample) {
    Figure figure = figures.get(sample / 2);
    double amount = (sample % 2 == 0 ? 1 : -1) * figure.standardDeviation();
    try {
      table.read(sample, figure.effect().apply(layout, amount));
    } catch (IllegalArgumentException | IllegalStateException impossible) {
      table.impossible(sample);
    }
  }

  private CheckChance chance(int check, SampleTable nominal, SampleTable table, SampleTable alone) {
    int notGood = 0;
    int stop = 0;
    for (int sample = 0; sample < table.samples(); sample++) {
      Verdict verdict = table.verdict(sample, check);
      notGood += verdict == Verdict.GOOD ? 0 : 1;
      stop += verdict == Verdict.STOP ? 1 : 0;
    }
    Check judged = judge.checks().get(check);
    double value = nominal.value(0, check);
    return new CheckChance(
        judged.id(),
        judged.title(),
        judged.measure(),
        value,
        nominal.verdict(0, check),
        standardDeviation(check, value, table),
        (double) notGood / table.samples(),
        (double) stop / table.samples(),
        shares(check, value, alone));
  }

  /** Measured from the nominal value, so that large values with small spread keep their digits. */
  private static double standardDeviation(int check, double value, SampleTable table) {
    int count = 0;
    double sum = 0;
    double squares = 0;
    for (int sample = 0; sample < table.samples(); sample++) {
      if (table.has(sample, check)) {
        double off = table.value(sample, check) - value;
        count++;
        sum += off;
        squares += off * off;
      }
    }
    return count < 2 ? 0 : Math.sqrt(Math.max(0, squares - sum * sum / count) / (count - 1));
  }

  private List<FigureShare> shares(int check, double value, SampleTable alone) {
    double[] squares = new double[figures.size()];
    double total = 0;
    for (int i = 0; i < squares.length; i++) {
      double more = change(check, value, alone, 2 * i);
      double less = change(check, value, alone, 2 * i + 1);
      squares[i] = Math.max(more * more, less * less);
      total += squares[i];
    }
    List<FigureShare> shares = new ArrayList<>();
    for (int i = 0; i < squares.length; i++) {
      if (total > 0 && squares[i] >= LEAST_SHARE * total) {
        shares.add(new FigureShare(figures.get(i), squares[i] / total));
      }
    }
    shares.sort(Comparator.comparingDouble(FigureShare::share).reversed());
    return shares;
  }

  private static double change(int check, double value, SampleTable alone, int sample) {
    return alone.has(sample, check) ? alone.value(sample, check) - value : 0;
  }

  private static int impossible(SampleTable table) {
    int count = 0;
    for (int sample = 0; sample < table.samples(); sample++) {
      count += table.isImpossible(sample) ? 1 : 0;
    }
    return count;
  }

  private interface SampleWork {
    void of(int sample);
  }

  /** Deals the samples out to the workers; each sample stands by itself. */
  private void shared(int samples, SampleWork work) {
    List<FutureTask<Void>> tasks = new ArrayList<>();
    for (int worker = 1; worker < workers; worker++) {
      int first = worker;
      FutureTask<Void> task = new FutureTask<>(() -> deal(first, samples, work), null);
      tasks.add(task);
      Thread thread = new Thread(task, "uncertainty-" + worker);
      thread.setDaemon(true);
      thread.start();
    }
    deal(0, samples, work);
    for (FutureTask<Void> task : tasks) {
      await(task);
    }
  }

  private void deal(int first, int samples, SampleWork work) {
    for (int sample = first; sample < samples; sample += workers) {
      work.of(sample);
    }
  }

  private static void await(FutureTask<Void> task) {
    try {
      task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The uncertainty study was interrupted before its end.", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException(
          "The uncertainty study failed: " + e.getCause().getMessage(), e.getCause());
    }
  }
}
