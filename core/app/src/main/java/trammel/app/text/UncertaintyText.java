package trammel.app.text;

import trammel.engine.uncertainty.CheckChance;
import trammel.engine.uncertainty.FigureOrigin;
import trammel.engine.uncertainty.FigureShare;
import trammel.engine.uncertainty.UncertaintyResult;

/** The chance of each check on a screen, the likeliest to stop first. */
public final class UncertaintyText {
  /** A chance below this is not worth a line. */
  private static final double LEAST_CHANCE = 0.005;

  private static final String MARGIN = "              ";

  private final Amounts amounts;

  /**
   * @param amounts prints values in the reader's units
   */
  public UncertaintyText(Amounts amounts) {
    this.amounts = amounts;
  }

  /** The chances, with what to measure again or to hold closer. */
  public String text(UncertaintyResult result) {
    StringBuilder text =
        new StringBuilder("HOW SURE: chance that a check is not good, as measured and made\n");
    int sure = 0;
    for (CheckChance chance : result.checks()) {
      if (chance.notGoodShare() < LEAST_CHANCE) {
        sure++;
      } else {
        text.append(entry(chance));
      }
    }
    text.append("  ").append(sure);
    text.append(sure == 1 ? " other check stays good" : " other checks stay good");
    text.append(" in more than 199 of 200 samples.\n");
    if (result.impossible() > 0) {
      text.append("  ").append(result.impossible()).append(" samples could not stand at all.\n");
    }
    return text.append("  ")
        .append(result.samples())
        .append(" samples, seed ")
        .append(result.seed())
        .append(".\n")
        .toString();
  }

  private String entry(CheckChance chance) {
    String first =
        "  "
            + padded(percent(chance.notGoodShare()))
            + " not good, "
            + padded(percent(chance.stopShare()))
            + " stop  "
            + chance.title()
            + ": "
            + amounts.value(chance.measure(), chance.value())
            + ", give or take "
            + amounts.value(chance.measure(), 2 * chance.standardDeviation());
    return first + "\n" + Paragraph.wrap(remedy(chance), MARGIN, MARGIN + "  ");
  }

  private static String padded(String text) {
    return " ".repeat(Math.max(0, "100 %".length() - text.length())) + text;
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  private static String remedy(CheckChance chance) {
    boolean decided = chance.stopShare() < LEAST_CHANCE || chance.stopShare() > 1 - LEAST_CHANCE;
    if (decided && chance.notGoodShare() > 1 - LEAST_CHANCE) {
      return "It fails as it is drawn; change the layout.";
    }
    if (chance.figures().isEmpty()) {
      return "No figure moves it.";
    }
    FigureShare most = chance.figures().get(0);
    String what =
        most.figure().origin() == FigureOrigin.MEASURED ? "Measure again: " : "Hold closer: ";
    return what
        + most.figure().name()
        + " ("
        + most.figure().how()
        + "), "
        + percent(most.share())
        + " of the scatter.";
  }
}
