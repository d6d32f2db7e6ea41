package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.planning.extension.SpringSet;
import trammel.planning.job.PickupOverride;
import trammel.reading.quantity.PartialPosition;
import trammel.reading.quantity.Position;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problem;
import trammel.reading.tree.Problems;

/** Puts the pick-up points that the vehicle dictates in place of the proposed ones. */
final class PickUpOverrides {
  private final Map<String, PickupOverride> overrides;

  PickUpOverrides(Map<String, PickupOverride> overrides) {
    this.overrides = overrides;
  }

  AxleGuide over(AxleGuide proposed) {
    List<Bar> bars = new ArrayList<>(proposed.bars().size());
    for (Bar bar : proposed.bars()) {
      bars.add(
          moved(
              bar.name(),
              bar,
              given ->
                  bar.withPoint(End.FRAME, over(given.frame(), bar.frame()))
                      .withPoint(End.AXLE, over(given.axle(), bar.axle()))));
    }
    return proposed.withBars(bars);
  }

  SpringSet over(SpringSet proposed) {
    List<SpringUnit> springs = new ArrayList<>(proposed.springs().size());
    for (SpringUnit spring : proposed.springs()) {
      springs.add(
          moved(
              spring.name(),
              spring,
              given ->
                  spring
                      .withPoint(End.FRAME, over(given.frame(), spring.frame()))
                      .withPoint(End.AXLE, over(given.axle(), spring.axle()))));
    }
    List<ShockUnit> shocks = new ArrayList<>(proposed.shocks().size());
    for (ShockUnit shock : proposed.shocks()) {
      shocks.add(
          moved(
              shock.name(),
              shock,
              given ->
                  shock
                      .withPoint(End.FRAME, over(given.frame(), shock.frame()))
                      .withPoint(End.AXLE, over(given.axle(), shock.axle()))));
    }
    return new SpringSet(springs, shocks, proposed.isClear());
  }

  /** The part with its points as the job gives them, refused where the job says so. */
  private <T> T moved(String name, T proposed, Function<PickupOverride, T> move) {
    PickupOverride given = overrides.get(name);
    if (given == null) {
      return proposed;
    }
    try {
      return move.apply(given);
    } catch (IllegalArgumentException impossible) {
      throw new BadInputException(
          List.of(
              Problem.error(
                  given.location(),
                  "points for " + name,
                  "two that the part can join",
                  impossible.getMessage())));
    }
  }

  /** Reports overrides that name no part of the layout. */
  void refuseUnknown(List<Bar> bars, SpringSet springs, Problems problems) {
    List<String> names = new ArrayList<>();
    for (Bar bar : bars) {
      names.add(bar.name());
    }
    for (SpringUnit spring : springs.springs()) {
      names.add(spring.name());
    }
    for (ShockUnit shock : springs.shocks()) {
      names.add(shock.name());
    }
    for (Map.Entry<String, PickupOverride> entry : overrides.entrySet()) {
      String name = entry.getKey();
      PickupOverride override = entry.getValue();
      if (!names.contains(name)) {
        problems.error(
            override.location(),
            name,
            "a part of this layout: " + String.join(", ", names),
            "Name one of these parts.");
      }
    }
  }

  private static Point3 over(PartialPosition given, Point3 proposed) {
    if (given.isEmpty()) {
      return proposed;
    }
    Position position = given.over(new Position(proposed.xMm(), proposed.yMm(), proposed.zMm()));
    return new Point3(position.forwardMm(), position.leftMm(), position.upMm());
  }
}
