package trammel.engine.uncertainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
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

  /** Samples that are summed up together. */
  private static final int BLOCK = 100;

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
    return run(layout, samples, seed, done -> {});
  }

  /**
   * The chances of the checks.
   *
   * @param layout the layout with every figure as it was taken to be
   * @param samples how many vehicles to try, 100 to 100 000
   * @param seed any number; the same one gives the same answer
   * @param progress is told how many samples are done, by any of the threads at work
   * @throws IllegalArgumentException if the number of samples is outside its range
   */
  public UncertaintyResult run(Layout layout, int samples, long seed, IntConsumer progress) {
    Given.within("number of samples", samples, FEWEST_SAMPLES, MOST_SAMPLES);
    SampleTable nominal = new SampleTable(judge, 1);
    nominal.read(0, layout);
    SampleTally tally = tally(layout, nominal, samples, seed, progress);
    SampleTable alone = new SampleTable(judge, 2 * figures.size());
    shared(2 * figures.size(), sample -> alone(layout, alone, sample));
    List<CheckChance> chances = new ArrayList<>();
    for (int check = 0; check < judge.checks().size(); check++) {
      if (nominal.has(0, check)) {
        chances.add(chance(check, nominal, tally, alone));
      }
    }
    chances.sort(
        Comparator.comparingDouble(CheckChance::stopShare)
            .thenComparingDouble(CheckChance::notGoodShare)
            .reversed());
    return new UncertaintyResult(samples, seed, tally.impossibleSamples(), chances);
  }

  /** Block by block: each is summed up in the order of its samples, then all in their order. */
  private SampleTally tally(
      Layout layout, SampleTable nominal, int samples, long seed, IntConsumer progress) {
    SampleTally[] blocks = new SampleTally[(samples + BLOCK - 1) / BLOCK];
    AtomicInteger done = new AtomicInteger();
    shared(
        blocks.length,
        block -> {
          int end = Math.min(samples, (block + 1) * BLOCK);
          SampleTally tally = new SampleTally(judge, nominal.values(0));
          for (int sample = block * BLOCK; sample < end; sample++) {
            draw(layout, tally, sample, seed);
          }
          blocks[block] = tally;
          progress.accept(done.addAndGet(end - block * BLOCK));
        });
    SampleTally all = new SampleTally(judge, nominal.values(0));
    for (SampleTally block : blocks) {
      all.add(block);
    }
    return all;
  }

  private void draw(Layout layout, SampleTally tally, int sample, long seed) {
    NormalDraws draws = new NormalDraws(seed, sample);
    try {
      Layout built = layout;
      for (Figure figure : figures) {
        built = figure.effect().apply(built, draws.next() * figure.standardDeviation());
      }
      tally.read(built);
    } catch (IllegalArgumentException | IllegalStateException impossible) {
      // The engine says why no such vehicle can stand; the sample counts as a failure.
      tally.impossible();
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

  private CheckChance chance(int check, SampleTable nominal, SampleTally tally, SampleTable alone) {
    Check judged = judge.checks().get(check);
    double value = nominal.value(0, check);
    return new CheckChance(
        judged.id(),
        judged.title(),
        judged.measure(),
        value,
        nominal.verdict(0, check),
        tally.standardDeviation(check),
        tally.notGoodShare(check),
        tally.stopShare(check),
        shares(check, value, alone));
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
