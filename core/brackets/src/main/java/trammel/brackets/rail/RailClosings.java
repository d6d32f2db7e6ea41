package trammel.brackets.rail;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.assembly.Held;
import trammel.assembly.SeamRun;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.RailClosing;
import trammel.brackets.work.Seam;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.Arc;
import trammel.trade.plates.BoxingPlate;
import trammel.trade.welding.FilletLegs;
import trammel.trade.welding.FilletWeld;
import trammel.trade.welding.SkipSequence;
import trammel.trade.welding.WeldPlace;
import trammel.trade.welding.WeldPosition;
import trammel.trade.welding.WeldRun;
import trammel.trade.welding.WeldSeam;

/**
 * The plates that close the channel rails of a job. Bars, springs and shocks each ask for a stretch
 * to be closed; stretches that overlap, or would leave a piece open that is shorter than the rail
 * is deep, are closed by one plate, which the lists then have once. A short open piece between two
 * boxes takes all of the twist that they do not, and its four plate ends lie where it works most:
 * common practice, no source.
 */
public final class RailClosings {
  /** Gap to each flange for the weld, 1/16 in: common practice, no source. */
  private static final double WELD_GAP_MM = RailBoxing.WELD_GAP_MM;

  /** Longest step of the skip welds, 2 1/2 in: common practice, no source. */
  private static final double STEP_MM = 2.5 * 25.4;

  private static final double FOOT_MM = 12 * 25.4;

  private final Rails rails;
  private final Optional<Arc> notch;
  private final List<Closed> plates = new ArrayList<>();

  private RailClosings(List<RailClosing> closings, Rails rails, Optional<Arc> notch) {
    this.rails = rails;
    this.notch = notch;
    Set<String> names = new HashSet<>();
    for (List<RailClosing> group : grouped(closings, rails)) {
      plates.add(Closed.of(group, names));
    }
  }

  /**
   * A plan with its plates that close the rails, their welds and their work; welds onto a plate
   * that became part of another are welds onto that. A plan that asks for none stays as it is.
   *
   * @param notch the arc that is cut out of both rails over the axle and out of the plates with
   *     them: x along the rail from the middle of the notch, y up from the rail's lower edge
   */
  public static WorkPlan closed(WorkPlan plan, Rails rails, Optional<Arc> notch) {
    if (plan.closings().isEmpty()) {
      return plan;
    }
    RailClosings closings = new RailClosings(plan.closings(), rails, notch);
    return closings.added(plan);
  }

  /**
   * One plate with all that it stands behind.
   *
   * @param asked the stretches that it closes, one at least
   * @param name its name in the lists
   * @param mark its side where it shares the name
   * @param stretch from its rear to its front end
   * @param stock the thickest that is asked for
   */
  private record Closed(
      List<RailClosing> asked,
      String name,
      String mark,
      Footprint stretch,
      BracketStock stock,
      Phrase why) {

    static Closed of(List<RailClosing> group, Set<String> names) {
      RailClosing first = group.get(0);
      Footprint stretch = footprint(first);
      for (RailClosing other : group) {
        stretch = stretch.with(footprint(other));
      }
      if (group.size() == 1) {
        names.add(first.id());
        return new Closed(group, first.name(), first.mark(), stretch, first.stock(), first.why());
      }
      String plain = stretch.side() + " rail shared boxing plate";
      String name = plain;
      for (int number = 2; !names.add(name); number++) {
        name = plain + " " + number;
      }
      BracketStock thickest =
          group.stream()
              .map(RailClosing::stock)
              .max(Comparator.comparingDouble(BracketStock::thicknessMm))
              .orElseThrow();
      String behind =
          group.stream().map(RailClosing::behind).distinct().collect(Collectors.joining(", "));
      Phrase why =
          Phrase.of(
              "one plate from {} to {} ahead of the axle, where plates of their own would"
                  + " overlap or leave less open than the rail is deep: behind {}",
              length(stretch.rearMm()),
              length(stretch.frontMm()),
              behind);
      return new Closed(group, name, "", stretch, thickest, why);
    }

    private static Footprint footprint(RailClosing asked) {
      return new Footprint(asked.left(), asked.rearMm(), asked.frontMm(), asked.behind());
    }

    String id() {
      return Held.id(name, mark);
    }

    boolean is(RailClosing.Kind kind) {
      return asked.stream().anyMatch(one -> one.kind() == kind);
    }

    /** Behind brackets of bars the weld is as large as the edge takes and laid in skips. */
    boolean carriesBars() {
      return is(RailClosing.Kind.ALONG) || is(RailClosing.Kind.BRACKET);
    }
  }

  /** The stretches of these rails that are closed in all, each by one plate. */
  public static List<Footprint> stretches(List<RailClosing> closings, Rails rails) {
    return grouped(closings, rails).stream()
        .map(group -> group.stream().map(Closed::footprint).reduce(Footprint::with).orElseThrow())
        .toList();
  }

  /** Stretches of one rail that one plate closes. */
  private static List<List<RailClosing>> grouped(List<RailClosing> closings, Rails rails) {
    List<List<RailClosing>> groups = new ArrayList<>();
    for (RailClosing closing : closings) {
      List<RailClosing> joined = new ArrayList<>(List.of(closing));
      int place = groups.size();
      for (int i = groups.size() - 1; i >= 0; i--) {
        List<RailClosing> group = groups.get(i);
        if (joined.stream()
            .anyMatch(one -> group.stream().anyMatch(other -> isOnePlate(one, other, rails)))) {
          groups.remove(i);
          joined.addAll(0, group);
          place = i;
        }
      }
      groups.add(place, joined);
    }
    return groups;
  }

  private static boolean isOnePlate(RailClosing one, RailClosing other, Rails rails) {
    return Closed.footprint(one).meets(Closed.footprint(other), rails.depthMm());
  }

  private WorkPlan added(WorkPlan plan) {
    WorkPlan.Builder closed = new WorkPlan.Builder();
    closed.add(welded(plan));
    addPlates(closed);
    addOperations(closed);
    return closed.build();
  }

  /** The plan with its welds onto the plates that are there. */
  private WorkPlan welded(WorkPlan plan) {
    Map<String, String> became = new HashMap<>();
    for (Closed plate : plates) {
      plate.asked().forEach(asked -> became.put(asked.id(), plate.id()));
    }
    List<WeldSeam> welds = new ArrayList<>(plan.welds().size());
    for (WeldSeam weld : plan.welds()) {
      List<WeldRun> runs = new ArrayList<>(weld.count());
      for (WeldRun run : weld.runs()) {
        runs.add(run instanceof SeamRun placed ? onto(placed, became) : run);
      }
      welds.add(
          new WeldSeam(
              weld.name(),
              weld.joint(),
              runs,
              weld.position(),
              weld.place(),
              weld.starts(),
              weld.why()));
    }
    return new WorkPlan(
        plan.parts(),
        plan.bolts(),
        plan.plates(),
        plan.tubes(),
        welds,
        plan.operations(),
        plan.feet(),
        plan.closings(),
        plan.members(),
        plan.railMounts(),
        plan.holds());
  }

  private static SeamRun onto(SeamRun run, Map<String, String> became) {
    List<String> onto =
        run.onto().stream().map(id -> became.getOrDefault(id, id)).distinct().toList();
    return new SeamRun(run.parts(), onto, run.path());
  }

  private void addPlates(WorkPlan.Builder plan) {
    Map<String, List<Closed>> pairs = new LinkedHashMap<>();
    for (Closed plate : plates) {
      pairs.computeIfAbsent(plate.name(), name -> new ArrayList<>()).add(plate);
    }
    pairs.values().forEach(alike -> addPlate(plan, alike));
  }

  /** One plate, or the two of a pair, which mirror each other. */
  private void addPlate(WorkPlan.Builder plan, List<Closed> alike) {
    Closed first = alike.get(0);
    BracketStock stock = first.stock();
    List<Held> places = new ArrayList<>(alike.size());
    Map<ClosedChannel.Edge, List<SeamRun>> runs = new EnumMap<>(ClosedChannel.Edge.class);
    for (Closed plate : alike) {
      Held held = channel(plate).held();
      places.add(new Held(plate.mark(), held.carrier(), held.place()));
      for (ClosedChannel.EdgeWeld weld : channel(plate).welds(plate.id(), WELD_GAP_MM)) {
        runs.computeIfAbsent(weld.edge(), edge -> new ArrayList<>()).add(weld.run());
      }
    }
    BoxingPlate shape = channel(first).shape(first.name(), WELD_GAP_MM);
    plan.add(stock.cut(first.name(), places, () -> shape, first.why()));
    String of = alike.size() > 1 ? " of both plates" : " of the plate";
    runs.forEach((edge, along) -> plan.add(seam(first, edge, along, of)));
  }

  private WeldSeam seam(
      Closed plate, ClosedChannel.Edge edge, List<SeamRun> runs, String ofPlates) {
    double plateMm = plate.stock().thicknessMm();
    boolean bars = plate.carriesBars();
    double legMm =
        bars
            ? Seam.legMm(plateMm, rails.wallMm())
            : FilletLegs.smallestMm(Math.min(plateMm, rails.wallMm()));
    WeldSeam seam =
        WeldSeam.along(
            plate.name() + " to " + edge.onto(),
            FilletWeld.ofLeg(legMm),
            runs,
            WeldPosition.HORIZONTAL,
            WeldPlace.VEHICLE,
            Phrase.of("{}{}{}", edge.words(), ofPlates, bars ? inSkips() : ""));
    double eachMm = runs.get(0).path().lengthMm();
    return bars ? seam.inSteps(new SkipSequence(eachMm, STEP_MM)) : seam;
  }

  private Phrase inSkips() {
    return Phrase.of(
        ", laid in skips of {} or less so that the rail stays straight", length(STEP_MM));
  }

  private ClosedChannel channel(Closed plate) {
    Footprint stretch = plate.stretch();
    return new ClosedChannel(
        rails,
        stretch.left(),
        stretch.rearMm(),
        stretch.frontMm(),
        plate.stock().thicknessMm(),
        notch);
  }

  private double runMm(Closed plate) {
    return plate.stretch().runMm(rails);
  }

  /** Long plates are counted by their length, short ones by the piece; all are dressed. */
  private void addOperations(WorkPlan.Builder plan) {
    List<Closed> along = plates.stream().filter(plate -> plate.is(RailClosing.Kind.ALONG)).toList();
    if (!along.isEmpty()) {
      double feet = along.stream().mapToDouble(plate -> runMm(plate) / FOOT_MM).sum();
      plan.add(
          new OperationNeed(
              "box-rail",
              feet,
              rounded(feet) + " ft of boxing plate",
              Phrase.of(
                  "channel rails are boxed behind the frame brackets: {}",
                  Phrase.joined(
                      ", ",
                      along.stream()
                          .map(
                              plate ->
                                  Phrase.of(
                                      "{} rail {}", plate.stretch().side(), length(runMm(plate))))
                          .toList()))));
    }
    List<Closed> local =
        plates.stream().filter(plate -> !plate.is(RailClosing.Kind.ALONG)).toList();
    if (!local.isEmpty()) {
      plan.add(
          new OperationNeed(
              "fit-local-boxing",
              local.size(),
              counted(local.size(), "plate"),
              Phrase.of(
                  "channel rail is closed behind {}",
                  local.stream()
                      .flatMap(plate -> plate.asked().stream())
                      .map(RailClosing::behind)
                      .distinct()
                      .collect(Collectors.joining("; ")))));
    }
    plan.add(
        new OperationNeed(
            "dress-plate",
            plates.size(),
            counted(plates.size(), "boxing plate"),
            Phrase.of("every plate that closes a rail")));
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }

  private static String rounded(double value) {
    return Double.toString(Math.rint(value * 10) / 10);
  }
}
