package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trammel.brackets.material.BoltSize;
import trammel.brackets.work.BoltNeed;
import trammel.planning.catalog.Catalog;
import trammel.trade.hardware.BoltChoice;
import trammel.trade.hardware.Tightening;

/** Finds the stocked bolt for every grip: rounded up to the next length, one line a length. */
final class BoltSchedule {
  private static final int WASHERS = 2;
  private final Catalog catalog;
  private final List<BoltLine> lines = new ArrayList<>();

  BoltSchedule(Catalog catalog) {
    this.catalog = catalog;
  }

  List<BoltLine> lines(List<BoltNeed> needs) {
    for (BoltNeed need : needs) {
      add(line(need));
    }
    return List.copyOf(lines);
  }

  private BoltLine line(BoltNeed need) {
    BoltSize size = catalog.bolt(need.boltKey());
    BoltChoice choice = size.choose(need.gripMm());
    return new BoltLine(
        size,
        choice,
        need.gripMm(),
        need.quantity(),
        Tightening.REUSABLE.torqueNmm(choice.thread(), size.grade()),
        setPrice(size, choice.lengthMm()),
        need.where(),
        need.why());
  }

  private static BigDecimal setPrice(BoltSize size, double lengthMm) {
    for (BoltSize.Stocked stocked : size.lengths()) {
      if (stocked.lengthMm() == lengthMm) {
        return stocked
            .price()
            .add(size.nutPrice())
            .add(size.washerPrice().multiply(BigDecimal.valueOf(WASHERS)));
      }
    }
    throw new IllegalStateException("no stocked length " + lengthMm + " of " + size.key());
  }

  private void add(BoltLine line) {
    for (int i = 0; i < lines.size(); i++) {
      BoltLine other = lines.get(i);
      if (other.size().key().equals(line.size().key())
          && other.choice().lengthMm() == line.choice().lengthMm()
          && other.gripMm() == line.gripMm()) {
        lines.set(i, together(other, line));
        return;
      }
    }
    lines.add(line);
  }

  private static BoltLine together(BoltLine a, BoltLine b) {
    return new BoltLine(
        a.size(),
        a.choice(),
        a.gripMm(),
        a.quantity() + b.quantity(),
        a.torqueNmm(),
        a.setPrice(),
        Words.both(a.where(), b.where()),
        a.why().and(b.why()));
  }
}
