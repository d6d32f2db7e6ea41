package trammel.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.travel.SpringState;
import trammel.app.travel.Station;
import trammel.app.travel.TravelStudy;
import trammel.engine.layout.ShockUnit;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.SpringReading;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** The curves through heave and roll on a screen. */
public final class TravelText {
  private static final int ANGLE_PLACES = 2;

  private final TravelStudy study;
  private final QuantityPrinter printer;

  /**
   * @param study the curves
   * @param units the units of the reader
   */
  public TravelText(TravelStudy study, UnitSystem units) {
    this.study = study;
    printer = new QuantityPrinter(units);
  }

  /** Heave, springs, roll, then what the bushings give. */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append("HEAVE, both wheels together, bump positive\n").append(heave());
    text.append("\nSPRINGS in heave, each at its own load\n").append(springs());
    text.append("\nROLL about ride height, left wheel up positive\n").append(roll());
    text.append("\nBIND: what the bushings of each bar give in roll, at most\n").append(bind());
    for (String sentence : study.outOfReach()) {
      text.append("\nOUT OF REACH  ").append(sentence).append('\n');
    }
    return text.toString();
  }

  private String heave() {
    List<String> heads =
        new ArrayList<>(
            List.of("heave", "pinion", "front joint", "rear joint", "shift", "forward", "shaft"));
    addStrutHeads(heads);
    heads.add("wheel rate");
    Table table = new Table("r".repeat(heads.size()));
    table.row(heads.toArray(new String[0]));
    for (Station station : study.heave()) {
      List<String> cells = new ArrayList<>();
      cells.add(printer.length(station.pose().heaveMm()));
      cells.add(angle(station.shaft().pinionElevationRad()));
      cells.add(angle(station.shaft().frontJointRad()));
      cells.add(angle(station.shaft().rearJointRad()));
      cells.add(small(station.pose().lateralMm()));
      cells.add(small(station.pose().forwardMm()));
      cells.add(small(station.shaft().lengthMm()));
      addStruts(cells, station);
      cells.add(printer.rate(station.rates().heaveNPerMm()));
      table.row(cells.toArray(new String[0]));
    }
    return table.text("  ")
        + "  wheel rate: each wheel, from the geometry and the springs' rate at that height,"
        + " the air shut in\n";
  }

  /** What each spring does in heave, both wheels together. */
  private String springs() {
    Table table = new Table("rlrrrrrr");
    table.row("heave", "spring", "length", "load", "rate", "pressure", "at rest", "load at rest");
    boolean outside = false;
    for (Station station : study.heave()) {
      for (SpringState spring : station.springs()) {
        Optional<SpringState.Air> air = spring.air();
        outside |= !spring.inTable();
        table.row(
            printer.length(station.pose().heaveMm()),
            spring.name() + (spring.inTable() ? "" : " *"),
            small(spring.lengthMm()),
            printer.force(spring.loadN()),
            printer.rate(spring.rateNPerMm()),
            air.map(one -> printer.pressure(one.gaugeMPa())).orElse(""),
            air.map(one -> printer.pressure(one.restGaugeMPa())).orElse(""),
            air.map(one -> printer.force(one.restLoadN())).orElse(""));
      }
    }
    return table.text("  ")
        + "  air filled at ride and shut in: in motion by p V^1.38, at rest by p V, absolute"
        + " pressure\n"
        + (outside
            ? "  * outside its load-height table; the figures are of the table's end\n"
            : "");
  }

  private String roll() {
    List<String> heads =
        new ArrayList<>(List.of("roll", "roll steer", "shift", "pinion", "bind", "in", "force"));
    addStrutHeads(heads);
    Table table = new Table("rrrrrlr" + "r".repeat(heads.size() - 7));
    table.row(heads.toArray(new String[0]));
    for (Station station : study.roll()) {
      LinkReading worst = station.worstBind();
      boolean binds = Math.abs(worst.stretchMm()) >= 0.005;
      List<String> cells = new ArrayList<>();
      cells.add(angle(station.pose().rollRad()));
      cells.add(printer.angle(station.pose().yawRad(), 3));
      cells.add(small(station.pose().lateralMm()));
      cells.add(angle(station.shaft().pinionElevationRad()));
      cells.add(small(Math.abs(worst.stretchMm())));
      cells.add(binds ? worst.name() : "");
      cells.add(printer.force(Math.abs(worst.bindForceN())));
      addStruts(cells, station);
      table.row(cells.toArray(new String[0]));
    }
    return table.text("  ");
  }

  private String bind() {
    if (study.roll().isEmpty()) {
      return "  no pose in roll can be reached\n";
    }
    Table table = new Table("lrr");
    table.row("bar", "stretch", "force");
    int bars = study.roll().get(0).bars().size();
    for (int i = 0; i < bars; i++) {
      LinkReading worst = study.worstBindInRoll(i);
      table.row(
          worst.name(),
          small(Math.abs(worst.stretchMm())),
          printer.force(Math.abs(worst.bindForceN())));
    }
    Station last = study.roll().get(study.roll().size() - 1);
    return table.text("  ")
        + "  over "
        + DecimalText.trimmed(Math.toDegrees(last.pose().rollRad()), 2)
        + " deg of roll each way; pull and push alike\n";
  }

  private void addStrutHeads(List<String> heads) {
    for (SpringReading spring : study.heave().get(0).rates().springs()) {
      heads.add(spring.name());
    }
    for (ShockUnit shock : study.layout().shocks()) {
      heads.add(shock.name());
    }
  }

  private void addStruts(List<String> cells, Station station) {
    for (SpringReading spring : station.rates().springs()) {
      cells.add(small(spring.lengthMm()));
    }
    for (double lengthMm : station.shockLengthsMm()) {
      cells.add(small(lengthMm));
    }
  }

  private String angle(double angleRad) {
    return printer.angle(angleRad, ANGLE_PLACES);
  }

  /** Thousandths of an inch, hundredths of a millimetre: a fraction would hide the motion. */
  private String small(double lengthMm) {
    return printer.decimalLength(lengthMm, 3);
  }
}
