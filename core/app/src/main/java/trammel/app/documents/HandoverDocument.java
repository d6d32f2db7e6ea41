package trammel.app.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.app.text.Amounts;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.planning.estimate.BoltLine;
import trammel.planning.fitup.Mount;
import trammel.planning.job.CarriedLoad;
import trammel.reading.quantity.UnitSystem;

/**
 * What the owner takes home with the vehicle: what it was set to, what to look at and when, what
 * never to do, and what was agreed after the quote. Intervals: common practice, no source.
 */
public final class HandoverDocument {
  private final JobPaper paper;

  /**
   * @param paper the job
   */
  public HandoverDocument(JobPaper paper) {
    this.paper = paper;
  }

  /** The document. */
  public PaperDocument document() {
    DocumentModel model = paper.customerModel("Handover to the owner");
    model.put("set", set());
    model.put("looks", looks());
    model.put("bolts", bolts());
    model.put("never", DocumentModel.texts(never()));
    model.put("warranty", paper.house().promises().warranty().orElse(""));
    model.put("revisions", RecordDocument.revisions());
    return paper.document("handover", model);
  }

  /** What the owner may measure again, with room for what it was on the day. */
  private Grid set() {
    Chassis chassis = paper.draft().layout().chassis();
    Grid grid =
        new Grid(
            "lbll",
            new int[] {52, 16, 16, 16},
            "set to, at ride with nobody in it",
            "plan",
            "left",
            "right");
    row(grid, "ground to the frame's underside at the axle", chassis.rails().undersideMm(0));
    row(grid, "middle of the wheel above the ground", chassis.tyre().loadedRadiusMm());
    for (ShockUnit shock : paper.draft().layout().shocks()) {
      row(grid, words(shock.name()) + ", middle to middle of its bolts", shock.lengthMm());
    }
    // A coil that sits on its shock is as long as that says.
    Set<String> apart =
        Mount.of(paper.draft().layout()).stream().map(Mount::part).collect(Collectors.toSet());
    for (SpringUnit spring : paper.draft().layout().springs()) {
      if (apart.contains(spring.name())) {
        row(grid, words(spring.name()) + ", seat to seat", spring.lengthMm());
      }
    }
    row(grid, "wheel travel up from ride", chassis.travel().bumpMm());
    row(grid, "wheel travel down from ride", chassis.travel().droopMm());
    return grid;
  }

  private void row(Grid grid, String what, double lengthMm) {
    grid.row(what, paper.printer().length(lengthMm), "", "");
  }

  private String words(String name) {
    return paper.words().in(name);
  }

  private Grid looks() {
    Grid grid =
        new Grid(
            "sll",
            new int[] {24, 60, 16},
            "when",
            "what to look at; what is not good goes to the shop before the next drive",
            "done, date");
    grid.row(
        far(50, 80),
        "Every bolt of the list below drawn to its torque again, standing at ride height. Jam nuts"
            + " of the bars tight. Hoses, cables and lines free over the whole travel.",
        "");
    grid.row(
        far(500, 800),
        "The same once more. Ride height left and right against the table above. Alignment read out"
            + " again if the vehicle pulls or a tyre wears on one edge.",
        "");
    grid.row(
        "every " + far(5000, 8000).replace("after ", "") + " or half a year",
        "Bushings and joints for play, rubber for cracks. Every weld and bracket for cracks and"
            + " rust, paint touched up. Bump stops there and whole. Springs seated"
            + (onAir()
                ? "; air springs and lines without leaks or chafing, the tank drained of water"
                : "")
            + ". Tyres for even wear.",
        "");
    grid.row(
        "after any blow",
        "Kerb, pothole, overload, grounding: look at bars, brackets, welds and axle before driving"
            + " on. A bent bar is replaced, never straightened.",
        "");
    grid.row(
        "when jobs are done on it",
        "Whoever works on brakes, shaft, tank or exhaust is shown this sheet.",
        "");
    return grid;
  }

  private boolean onAir() {
    return paper.draft().layout().springs().stream()
        .anyMatch(spring -> spring.kind() == SpringKind.AIR);
  }

  private String far(int miles, int kilometres) {
    return paper.printer().system() == UnitSystem.US
        ? "after " + String.format(java.util.Locale.ROOT, "%,d", miles) + " miles"
        : "after " + kilometres + " km";
  }

  private Grid bolts() {
    Grid grid =
        new Grid("rlbl", new int[] {10, 28, 16, 46}, "how many", "bolt", "torque, dry", "where");
    for (BoltLine bolt : paper.estimate().materials().bolts()) {
      grid.row(
          Amounts.plain(bolt.quantity()),
          bolt.size().title() + " x " + paper.printer().length(bolt.choice().lengthMm()),
          paper.printer().torque(bolt.torqueNmm()),
          words(bolt.where()));
    }
    return grid;
  }

  private List<String> never() {
    List<String> never = new ArrayList<>();
    never.add(
        "Never lift or tie the vehicle down by a bar, a spring, a shock or a bracket; never work"
            + " under it on a jack alone.");
    never.add(
        "Never cut, heat or weld on frame, axle or brackets but by a qualified welder with battery,"
            + " fuel and lines made safe.");
    List<CarriedLoad> loads = paper.draft().job().measured().loads();
    never.add(
        loads.isEmpty()
            ? "No load was named for this job: ask before it carries more than a driver."
            : "Never load it beyond what it was laid out for: "
                + loads.stream()
                    .map(load -> load.name() + " " + paper.printer().mass(load.massKg()))
                    .collect(Collectors.joining(", "))
                + ".");
    never.add(
        "Other tyres, wheels, springs or ride height change what was checked: ask before they are"
            + " fitted.");
    never.add(
        "The vehicle was changed: inspection, registration and insurance are told where the law or"
            + " the policy asks for it.");
    never.add(
        "The figures behind this job are screening estimates. They do not approve a design, a weld"
            + " or a vehicle.");
    return never;
  }
}
