package trammel.app.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.engine.checks.Verdict;
import trammel.planning.compare.Difference;
import trammel.planning.compare.Differences;
import trammel.planning.compare.PriceDifference;
import trammel.planning.compare.PriceDifferences;
import trammel.planning.compare.PricedWork;
import trammel.planning.compare.Variant;
import trammel.planning.estimate.Estimate;

/** Variants of a job for machines. */
public final class CompareJson {
  private CompareJson() {}

  /** One entry a variant; each but the first with what differs from the first. */
  public static Map<String, Object> of(List<Variant> variants, Amounts amounts) {
    List<Object> entries = new ArrayList<>();
    for (Variant variant : variants) {
      Map<String, Object> entry = figures(variant, amounts);
      if (variant != variants.get(0)) {
        entry.put("differences", differences(variants.get(0), variant));
        entry.put("price_differences", prices(variants.get(0), variant));
        entry.put("payment_differences", payments(variants.get(0), variant));
      }
      entries.add(entry);
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", variants.get(0).estimate().draft().job().header().number());
    json.put("variants", entries);
    return json;
  }

  private static Map<String, Object> figures(Variant variant, Amounts amounts) {
    Estimate estimate = variant.estimate();
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("variant", variant.label());
    entry.put("subtotal", estimate.price().subtotal().amount());
    entry.put("total", estimate.price().total().amount());
    entry.put("mean_h", estimate.hours().meanHours());
    entry.put("p80_h", estimate.hours().p80Hours());
    entry.put("weld_length_mm", estimate.welds().lengthMm());
    entry.put("steel_kg", estimate.materials().steelMassKg());
    entry.put("weight_kg", estimate.materials().steelMassKg() + estimate.materials().partsMassKg());
    entry.put(StopsJson.FIELD, StopsJson.of(stops(variant, amounts)));
    entry.put("stop", variant.count(Verdict.STOP));
    entry.put("look_again", variant.count(Verdict.LOOK_AGAIN));
    return entry;
  }

  private static Stops stops(Variant variant, Amounts amounts) {
    String job = variant.estimate().draft().job().header().number();
    return Stops.of(job, variant.checks(), amounts);
  }

  private static List<Object> differences(Variant first, Variant other) {
    List<Object> rows = new ArrayList<>();
    for (Difference difference : Differences.between(first.estimate(), other.estimate())) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("kind", difference.kind().name().toLowerCase(Locale.ROOT));
      row.put("name", difference.name());
      row.put("unit", unit(difference.kind()));
      row.put("first", difference.first());
      row.put("other", difference.other());
      row.put("why", difference.why().in(other.estimate().draft().printer()));
      rows.add(row);
    }
    return rows;
  }

  private static List<Object> prices(Variant first, Variant other) {
    return rows(
        PriceDifferences.between(PricedWork.of(first.estimate()), PricedWork.of(other.estimate())));
  }

  private static List<Object> payments(Variant first, Variant other) {
    return rows(PriceDifferences.ofPayments(first.estimate().price(), other.estimate().price()));
  }

  private static List<Object> rows(List<PriceDifference> parts) {
    List<Object> rows = new ArrayList<>();
    for (PriceDifference part : parts) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("cause", part.cause().name().toLowerCase(Locale.ROOT));
      row.put("name", part.name());
      row.put("first", part.first());
      row.put("other", part.other());
      row.put("change", part.change().amount());
      rows.add(row);
    }
    return rows;
  }

  private static String unit(Difference.Kind kind) {
    return switch (kind) {
      case HOURS -> "h";
      case WELD, TUBE -> "mm";
      case PLATE -> "mm2";
      case PART -> "1";
    };
  }
}
