package trammel.brackets.rail;

import static trammel.engine.quantity.Amount.length;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import trammel.brackets.work.BracketBasis;
import trammel.brackets.work.BracketStock;
import trammel.brackets.work.RailClosing;
import trammel.brackets.work.VehicleParts;
import trammel.brackets.work.WorkPlan;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;

/**
 * The stretches of channel rails that are closed where brackets of bars take hold of them; {@link
 * RailClosings} makes their plates.
 */
public final class RailBoxing {
  /** The plate goes on beyond the outermost bracket, 2 in: common practice, no source. */
  public static final double LEAD_MM = 2 * 25.4;

  /** Gap to each flange for the weld, 1/16 in: common practice, no source. */
  public static final double WELD_GAP_MM = 25.4 / 16;

  private final Rails rails;
  private final BracketStock stock;
  private final List<Closing> along;
  private final List<Closing> local;

  /**
   * @param along behind these, one long plate a side
   * @param local behind these, short plates
   */
  private RailBoxing(List<Footprint> along, List<Footprint> local, BracketBasis basis) {
    rails = basis.rails();
    stock = basis.boxing();
    this.along = rails.boxed() ? List.of() : along(along);
    this.local = rails.boxed() ? List.of() : local(local);
  }

  /**
   * One plate a side from the rearmost to the foremost bracket. Others are closed by it too where
   * they are near, and by short plates of their own where they are not. Boxed rails need none.
   */
  public static RailBoxing along(
      List<Footprint> brackets, List<Footprint> others, BracketBasis basis) {
    List<Footprint> full = new ArrayList<>(brackets);
    List<Footprint> apart = new ArrayList<>();
    for (Footprint other : others) {
      boolean joins =
          brackets.stream().anyMatch(bracket -> bracket.widened(LEAD_MM).meets(other, 2 * LEAD_MM));
      (joins ? full : apart).add(other);
    }
    return new RailBoxing(full, apart, basis);
  }

  /** A short plate behind each bracket; those that would meet are one. Boxed rails need none. */
  public static RailBoxing local(List<Footprint> brackets, BracketBasis basis) {
    return new RailBoxing(List.of(), brackets, basis);
  }

  /** Id of what is behind a bracket: a boxing plate, or the rail where none is needed. */
  public String behind(Footprint bracket) {
    return Stream.concat(along.stream(), local.stream())
        .filter(closing -> closing.stretch().meets(bracket, 0))
        .map(Closing::name)
        .findFirst()
        .orElse(VehicleParts.rail(bracket.left()));
  }

  /** Ids of all that is there to weld a bracket to: the rail, and the plate where it is closed. */
  public List<String> onto(Footprint bracket) {
    String rail = VehicleParts.rail(bracket.left());
    String behind = behind(bracket);
    return behind.equals(rail) ? List.of(rail) : List.of(rail, behind);
  }

  /**
   * A plate that closes the channel over a stretch.
   *
   * @param name its name in the lists
   * @param stretch the stretch of rail that it closes
   * @param why what asks for it
   */
  private record Closing(String name, Footprint stretch, Phrase why) {}

  private List<Closing> along(List<Footprint> brackets) {
    List<Closing> closings = new ArrayList<>();
    for (Footprint run : merged(brackets, Double.POSITIVE_INFINITY)) {
      Footprint plate = run.widened(LEAD_MM);
      closings.add(
          new Closing(
              plate.side() + " rail boxing plate",
              plate,
              Phrase.of(
                  "closes the channel from {} to {} ahead of the axle: behind {}, with {}"
                      + " beyond the outermost at each end",
                  length(plate.rearMm()),
                  length(plate.frontMm()),
                  plate.bracket(),
                  length(LEAD_MM))));
    }
    return closings;
  }

  private List<Closing> local(List<Footprint> brackets) {
    List<Footprint> widened = new ArrayList<>(brackets.size());
    for (Footprint bracket : brackets) {
      widened.add(bracket.widened(LEAD_MM));
    }
    List<Closing> closings = new ArrayList<>();
    for (Footprint plate : merged(widened, LEAD_MM)) {
      closings.add(
          new Closing(
              plate.side() + " rail local boxing at " + plate.bracket(),
              plate,
              Phrase.of(
                  "closes the channel behind {} only, with {} beyond it at each end",
                  plate.bracket(),
                  length(LEAD_MM))));
    }
    return closings;
  }

  /** What is to be closed; nothing for boxed rails. */
  public WorkPlan plan() {
    WorkPlan.Builder plan = new WorkPlan.Builder();
    along.forEach(closing -> plan.add(asked(RailClosing.Kind.ALONG, closing)));
    local.forEach(closing -> plan.add(asked(RailClosing.Kind.BRACKET, closing)));
    return plan.build();
  }

  private RailClosing asked(RailClosing.Kind kind, Closing closing) {
    Footprint stretch = closing.stretch();
    return new RailClosing(
        kind,
        closing.name(),
        "",
        stretch.left(),
        stretch.rearMm(),
        stretch.frontMm(),
        stock,
        stretch.bracket(),
        closing.why());
  }

  private static List<Footprint> merged(List<Footprint> brackets, double apartMm) {
    List<Footprint> runs = new ArrayList<>();
    for (Footprint bracket : brackets) {
      Footprint run = bracket;
      for (int i = runs.size() - 1; i >= 0; i--) {
        if (runs.get(i).meets(run, apartMm)) {
          run = runs.remove(i).with(run);
        }
      }
      runs.add(run);
    }
    return runs;
  }
}
