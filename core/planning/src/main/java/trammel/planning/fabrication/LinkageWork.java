package trammel.planning.fabrication;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;
import trammel.planning.bars.BarMakeUp;
import trammel.planning.bars.HousingRoom;
import trammel.planning.bars.JointSeat;
import trammel.planning.bars.Mounting;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.PlateMaterial;
import trammel.planning.extension.Commission;
import trammel.planning.work.OperationNeed;
import trammel.planning.work.PlateNeed;
import trammel.planning.work.TubeNeed;
import trammel.planning.work.VehicleParts;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.trade.plates.Hole;
import trammel.trade.plates.RoundHole;

/**
 * The whole work of a linkage: bars made, brackets on rails and axle, rails boxed. Groups of bars
 * are added one after another; {@link #plan} then fits the brackets of each rail to each other and
 * lists everything.
 */
public final class LinkageWork {
  private final Commission commission;
  private final Catalog catalog;
  private final Chassis chassis;
  private final Rails rails;
  private final QuantityPrinter print;
  private final Mounting mounting;
  private final BracketStock boxing;
  private final List<Group> along = new ArrayList<>();
  private final List<Group> spread = new ArrayList<>();
  private final List<Group> lateral = new ArrayList<>();
  private final List<Body> outriggers = new ArrayList<>();
  private HousingRoom housing;

  /** A bar with what it is made of. */
  private record Group(Bar bar, BarMakeUp makeUp) {
    JointSeat frameSeat() {
      return new JointSeat(bar.frameJoint(), plateMm(), makeUp.frameHoles());
    }

    JointSeat axleSeat() {
      return new JointSeat(bar.axleJoint(), plateMm());
    }

    BracketStock stock() {
      return new BracketStock(makeUp.bracket(), plateMm(), makeUp.lightened());
    }

    private double plateMm() {
      return bar.bracket().isPresent()
          ? bar.bracket().get().thicknessMm()
          : makeUp.bracket().form().thicknessMm();
    }
  }

  /**
   * @param commission the finished layout
   * @param mounting side of the rails on which the bars along them run
   * @param boxing plate that closes channel rails
   */
  public LinkageWork(Commission commission, Mounting mounting, PlateMaterial boxing) {
    this.commission = commission;
    this.mounting = mounting;
    this.boxing = new BracketStock(boxing);
    catalog = commission.site().catalog();
    chassis = commission.layout().chassis();
    rails = chassis.rails();
    print = new QuantityPrinter(commission.site().units());
  }

  /** Bars in planes along the rails, each with a frame bracket and a bracket on the axle tube. */
  public LinkageWork along(List<Bar> bars, BarMakeUp makeUp) {
    for (Bar bar : bars) {
      along.add(new Group(bar, makeUp));
    }
    return this;
  }

  /** Upper bars that spread from a bridge over the housing to the rails' inner faces. */
  public LinkageWork spread(List<Bar> bars, BarMakeUp makeUp, double housingHeightMm) {
    for (Bar bar : bars) {
      spread.add(new Group(bar, makeUp));
    }
    housing = new HousingRoom(housingHeightMm, spread.get(0).axleSeat(), print);
    return this;
  }

  /** Bars across the vehicle. */
  public LinkageWork lateral(List<Bar> bars, BarMakeUp makeUp) {
    for (Bar bar : bars) {
      lateral.add(new Group(bar, makeUp));
    }
    return this;
  }

  /** Everything that the bars ask for. */
  public WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    outriggers.clear();
    makeBars(plan);
    axleBrackets(plan);
    List<FrameEnd> ends = frameEnds();
    List<LateralBarBrackets> across = lateral.stream().map(this::lateralBrackets).toList();
    Boxed boxed = boxed(ends, across);
    frameBrackets(plan, ends, boxed);
    lateralBrackets(plan, across, boxed);
    if (!rails.boxed()) {
      plan.add(new RailBoxing(rails, boxing, print).plan(boxed.along(), boxed.local()));
    }
    if (mounting == Mounting.OUTBOARD) {
      plan.add(new RunningBoards(commission.layout(), print).plan(barsOf(along), outriggers));
    }
    addShopWork(plan);
    return plan.build();
  }

  private void makeBars(WorkPlan.Builder plan) {
    for (Group group : all()) {
      plan.add(new BarMaking(group.bar(), group.makeUp(), bolts(group)).plan(print));
    }
    addOperation(plan, "make-bar", barsOf(all()), "bar", "each bar of the linkage: ");
  }

  private List<Group> all() {
    List<Group> all = new ArrayList<>(along);
    all.addAll(spread);
    all.addAll(lateral);
    return all;
  }

  private static List<Bar> barsOf(List<Group> groups) {
    List<Bar> bars = new ArrayList<>(groups.size());
    for (Group group : groups) {
      bars.add(group.bar());
    }
    return bars;
  }

  private void axleBrackets(WorkPlan.Builder plan) {
    for (Group group : along) {
      plan.add(
          new AxleBracket(group.bar(), group.axleSeat(), group.stock(), chassis, print)
              .plan(axleBolt(group)));
    }
    addOperation(plan, "fit-axle-bracket", barsOf(along), "bracket", "axle ends of ");
    if (!spread.isEmpty()) {
      Group first = spread.get(0);
      plan.add(
          new HousingBridge(
                  barsOf(spread), housing, first.axleSeat(), first.stock(), chassis, print)
              .plan(axleBolt(first)));
      addOperation(
          plan,
          "fit-axle-bracket",
          barsOf(spread),
          "bracket",
          "bridge over the housing with the axle ends of ");
    }
  }

  private String frameBolt(Group group) {
    return Bolts.key(catalog, group.bar().frameJoint().boltDiameterMm());
  }

  private String axleBolt(Group group) {
    return Bolts.key(catalog, group.bar().axleJoint().boltDiameterMm());
  }

  private double innerFaceThicknessMm() {
    return rails.boxed() ? rails.wallMm() : boxing.thicknessMm();
  }

  /** Across the vehicle for bars along it, along it for bars across. */
  private Vector3 bolts(Group group) {
    if (lateral.contains(group)) {
      return new Vector3(1, 0, 0);
    }
    Vector3 heading = along.contains(group) ? new Vector3(1, 0, 0) : heading(group.bar());
    return new Vector3(-heading.y(), heading.x(), 0);
  }

  /** A frame end of a bar along the rails, against the inner face or on an outrigger. */
  private record FrameEnd(Group group, InboardFrameBracket inboard, Outrigger outrigger) {
    Footprint footprint() {
      return inboard == null ? outrigger.footprint() : inboard.footprint();
    }
  }

  private List<FrameEnd> frameEnds() {
    List<Group> groups = new ArrayList<>(along);
    groups.addAll(spread);
    List<RailSeat> seats = new ArrayList<>(groups.size());
    for (Group group : groups) {
      seats.add(RailSeat.of(group.bar(), group.frameSeat(), rails, print));
    }
    List<RailSeat> apart = RailSeats.apart(seats, print);
    List<FrameEnd> ends = new ArrayList<>(groups.size());
    for (int i = 0; i < groups.size(); i++) {
      ends.add(frameEnd(groups.get(i), apart.get(i), i < along.size()));
    }
    return ends;
  }

  private FrameEnd frameEnd(Group group, RailSeat seat, boolean straight) {
    if (straight && mounting == Mounting.INBOARD) {
      return new FrameEnd(
          group,
          new InboardFrameBracket(seat, group.stock(), rails, innerFaceThicknessMm(), print),
          null);
    }
    Vector3 heading = straight ? new Vector3(1, 0, 0) : heading(group.bar());
    return new FrameEnd(
        group,
        null,
        new Outrigger(
            seat,
            group.stock(),
            rails,
            straight,
            heading,
            straight ? rails.wallMm() : innerFaceThicknessMm(),
            print));
  }

  private void frameBrackets(WorkPlan.Builder plan, List<FrameEnd> ends, Boxed boxed) {
    for (FrameEnd end : ends) {
      String bolt = frameBolt(end.group());
      if (end.inboard() != null) {
        plan.add(end.inboard().plan(bolt, boxed.behind(end.footprint())));
        continue;
      }
      boolean straight = along.contains(end.group());
      String rail = VehicleParts.rail(end.footprint().left());
      plan.add(end.outrigger().plan(bolt, straight ? rail : boxed.behind(end.footprint())));
      if (straight) {
        String name = "outrigger of " + end.group().bar().name();
        outriggers.add(new Body(name, end.outrigger().body(), Carrier.FRAME));
      }
    }
    frameOperations(plan);
  }

  /**
   * What closes the rails behind the brackets.
   *
   * @param along long plates
   * @param local short plates
   */
  private record Boxed(List<RailBoxing.Closing> along, List<RailBoxing.Closing> local) {
    /** Id of what is behind a bracket: a boxing plate, or the rail where none is needed. */
    String behind(Footprint bracket) {
      for (List<RailBoxing.Closing> closings : List.of(along, local)) {
        for (RailBoxing.Closing closing : closings) {
          if (closing.stretch().meets(bracket, 0)) {
            return closing.name();
          }
        }
      }
      return VehicleParts.rail(bracket.left());
    }
  }

  /** The way a bar points in plan, forward. */
  private static Vector3 heading(Bar bar) {
    Vector3 along = bar.axle().to(bar.frame());
    return new Vector3(along.x(), along.y(), 0).normalized();
  }

  private void frameOperations(WorkPlan.Builder plan) {
    String boxed = rails.boxed() ? "; the rails are boxed already, so no boxing plate" : "";
    if (mounting == Mounting.INBOARD) {
      addOperation(
          plan, "fit-frame-bracket", barsOf(along), "bracket", "inboard frame ends" + boxed + ": ");
    } else {
      addOperation(
          plan,
          "fit-outrigger",
          barsOf(along),
          "outrigger",
          "frame ends outside the rails" + boxed + ": ");
    }
    addOperation(
        plan,
        "fit-outrigger",
        barsOf(spread),
        "outrigger",
        "upper frame ends turned to their bars on the rails' inner faces" + boxed + ": ");
  }

  private LateralBarBrackets lateralBrackets(Group group) {
    return new LateralBarBrackets(
        group.bar(),
        group.frameSeat(),
        group.axleSeat(),
        group.stock(),
        chassis,
        innerFaceThicknessMm(),
        print);
  }

  private void lateralBrackets(
      WorkPlan.Builder plan, List<LateralBarBrackets> across, Boxed boxed) {
    for (int i = 0; i < across.size(); i++) {
      LateralBarBrackets brackets = across.get(i);
      plan.add(brackets.frame(frameBolt(lateral.get(i)), boxed.behind(brackets.footprint())));
      plan.add(brackets.axle(axleBolt(lateral.get(i))));
    }
    addOperation(plan, "fit-lateral-bar", barsOf(lateral), "bar", "both brackets of ");
  }

  private Boxed boxed(List<FrameEnd> ends, List<LateralBarBrackets> across) {
    if (rails.boxed()) {
      return new Boxed(List.of(), List.of());
    }
    RailBoxing railBoxing = new RailBoxing(rails, boxing, print);
    List<Footprint> brackets = new ArrayList<>(ends.stream().map(FrameEnd::footprint).toList());
    List<Footprint> behind = across.stream().map(LateralBarBrackets::footprint).toList();
    if (mounting == Mounting.OUTBOARD) {
      brackets.addAll(behind);
      return new Boxed(List.of(), railBoxing.local(brackets));
    }
    List<Footprint> full = new ArrayList<>(brackets);
    List<Footprint> apart = new ArrayList<>();
    for (Footprint footprint : behind) {
      boolean joins = false;
      for (Footprint bracket : brackets) {
        joins |= bracket.widened(RailBoxing.LEAD_MM).meets(footprint, 2 * RailBoxing.LEAD_MM);
      }
      (joins ? full : apart).add(footprint);
    }
    return new Boxed(railBoxing.along(full), railBoxing.local(apart));
  }

  private void addShopWork(WorkPlan.Builder builder) {
    WorkPlan plan = builder.build();
    int cuts = 0;
    for (TubeNeed tube : plan.tubes()) {
      cuts += 2 * tube.quantity();
    }
    int plates = 0;
    int holes = 0;
    for (PlateNeed plate : plan.plates()) {
      plates += plate.quantity();
      holes += plate.quantity() * drilled(plate);
    }
    builder.add(
        new OperationNeed("saw-tube", cuts, cuts + " cuts", "both ends of each bar's tube"));
    builder.add(
        new OperationNeed(
            "drill-plate", holes, holes + " holes", "joint bolts, in each bracket side"));
    builder.add(
        new OperationNeed(
            "dress-plate", plates, plates + " plates", "every bracket and boxing plate listed"));
  }

  /** Bolt holes; what lightens a plate is cut with its outline. */
  private static int drilled(PlateNeed plate) {
    int holes = 0;
    for (Hole hole : plate.plate().outline().holes()) {
      holes += hole instanceof RoundHole ? 1 : 0;
    }
    return holes;
  }

  private static void addOperation(
      WorkPlan.Builder plan, String key, List<Bar> bars, String unit, String why) {
    if (bars.isEmpty()) {
      return;
    }
    StringBuilder names = new StringBuilder(why);
    for (int i = 0; i < bars.size(); i++) {
      names.append(i == 0 ? "" : ", ").append(bars.get(i).name());
    }
    String driver = bars.size() + " " + unit + (bars.size() == 1 ? "" : "s");
    plan.add(new OperationNeed(key, bars.size(), driver, names.toString()));
  }
}
