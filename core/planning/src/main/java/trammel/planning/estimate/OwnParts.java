package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.BoughtAs;
import trammel.planning.catalog.Item;
import trammel.planning.job.Extra;
import trammel.planning.job.ExtraKind;
import trammel.planning.job.Terms;

/** Parts and outside work that a job adds by itself: bought, and in no catalog. */
public final class OwnParts {
  /** In the place of a supplier where the job names none. */
  static final String NO_SUPPLIER = "supplier to be named";

  private OwnParts() {}

  /** What the terms of a job add. */
  public static List<PartLine> of(Terms terms) {
    List<PartLine> parts = new ArrayList<>();
    for (Extra extra : terms.extras()) {
      if (extra.kind() == ExtraKind.PART || extra.kind() == ExtraKind.OUTSIDE_WORK) {
        parts.add(
            new PartLine(item(extra), extra.quantity().doubleValue(), Phrase.text(extra.why())));
      }
    }
    return parts;
  }

  private static Item item(Extra extra) {
    return new Item(
        extra.key(),
        extra.title(),
        "each",
        extra.price().orElse(BigDecimal.ZERO),
        extra.kind() == ExtraKind.PART ? BoughtAs.PART : BoughtAs.OUTSIDE_WORK,
        extra.supplier().orElse(NO_SUPPLIER),
        extra.leadDays(),
        0);
  }
}
