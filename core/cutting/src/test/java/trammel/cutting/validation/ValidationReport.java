package trammel.cutting.validation;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Cuts a half of the validation set and says how far each plan is above its mark. Every plan is
 * verified by a checker that shares nothing with the searches.
 */
public final class ValidationReport {
  private final Map<String, List<Double>> over = new LinkedHashMap<>();
  private final Map<String, Integer> proven = new LinkedHashMap<>();

  private ValidationReport() {}

  /**
   * @param args {@code tuned} or {@code unseen}; {@code bars}, {@code sheets}, {@code strips} or
   *     {@code outlines}; seconds whose effort, counted, each instance is given; part of a name
   *     that instances must have, if not all are wanted
   */
  public static void main(String[] args) {
    ValidationSet half = ValidationSet.valueOf(args[0].toUpperCase(Locale.ROOT));
    Duration limit = Duration.ofMillis((long) (1000 * Double.parseDouble(args[2])));
    List<Instance> instances =
        switch (args[1]) {
          case "bars" -> half.bars();
          case "sheets" -> half.sheets();
          case "strips" -> half.strips();
          case "outlines" -> half.outlines();
          default -> throw new IllegalArgumentException("no kind of list is called " + args[1]);
        };
    String wanted = args.length > 3 ? args[3] : "";
    new ValidationReport()
        .run(instances.stream().filter(i -> i.name().contains(wanted)).toList(), limit);
  }

  private void run(List<Instance> instances, Duration limit) {
    System.out.println("| list | result | bound | mark | over | by the clock | processor |");
    System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
    for (Instance instance : instances) {
      long start = System.nanoTime();
      long busy = processorNanos();
      Instance.Result result = instance.cut(limit);
      double seconds = (System.nanoTime() - start) / 1e9;
      report(instance, result, seconds, (processorNanos() - busy) / 1e9);
    }
    System.out.println();
    System.out.println("| family | lists | proven | mean over | most over |");
    System.out.println("| --- | --- | --- | --- | --- |");
    over.forEach(this::summary);
    List<Double> all = new ArrayList<>();
    over.values().forEach(all::addAll);
    if (over.size() > 1) {
      proven.put("all", proven.values().stream().mapToInt(n -> n).sum());
      summary("all", all);
    }
  }

  private static long processorNanos() {
    return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO).toNanos();
  }

  /** Without a mark the plan is held against its own bound, which no plan is better than. */
  private void report(Instance instance, Instance.Result result, double seconds, double busy) {
    double mark = instance.mark().orElse(result.bound());
    double above = result.value() / mark - 1;
    over.computeIfAbsent(instance.family(), family -> new ArrayList<>()).add(above);
    proven.merge(instance.family(), result.proven() ? 1 : 0, Integer::sum);
    System.out.printf(
        Locale.ROOT,
        "| %s | %.6g%s | %.6g | %.6g | %.2f %% | %.2f s | %.2f s |%n",
        instance.name(),
        result.value(),
        result.proven() ? ", proven" : "",
        result.bound(),
        mark,
        100 * above,
        seconds,
        busy);
  }

  private void summary(String family, List<Double> above) {
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %d | %.2f %% | %.2f %% |%n",
        family,
        above.size(),
        proven.get(family),
        100 * above.stream().mapToDouble(d -> d).average().orElse(0),
        100 * above.stream().mapToDouble(d -> d).max().orElse(0));
  }
}
