package trammel.planning.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.End;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.planning.document.Problems;
import trammel.planning.extension.SpringSet;
import trammel.planning.job.PickupOverride;
import trammel.planning.quantity.PartialPosition;
import trammel.planning.quantity.Position;

/** Puts the pick-up points that the vehicle dictates in place of the proposed ones. */
final class PickUpOverrides {
  private final Map<String, PickupOverride> overrides;

  PickUpOverrides(Map<String, PickupOverride> overrides) {
    this.overrides = overrides;
  }

  List<Bar> over(List<Bar> proposed) {
    List<Bar> bars = new ArrayList<>(proposed);
    bars.replaceAll(
        bar ->
            override(bar.name())
                .map(
                    o ->
                        bar.withPoint(End.FRAME, over(o.frame(), bar.frame()))
                            .withPoint(End.AXLE, over(o.axle(), bar.axle())))
                .orElse(bar));
    return bars;
  }

  SpringSet over(SpringSet proposed) {
    List<SpringUnit> springs = new ArrayList<>(proposed.springs());
    springs.replaceAll(
        spring ->
            override(spring.name())
                .map(
                    o ->
                        spring
                            .withPoint(End.FRAME, over(o.frame(), spring.frame()))
                            .withPoint(End.AXLE, over(o.axle(), spring.axle())))
                .orElse(spring));
    List<ShockUnit> shocks = new ArrayList<>(proposed.shocks());
    shocks.replaceAll(
        shock ->
            override(shock.name())
                .map(
                    o ->
                        shock
                            .withPoint(End.FRAME, over(o.frame(), shock.frame()))
                            .withPoint(End.AXLE, over(o.axle(), shock.axle())))
                .orElse(shock));
    return new SpringSet(springs, shocks);
  }

  /** Reports overrides that name no part of the layout. */
  void refuseUnknown(List<Bar> bars, SpringSet springs, Problems problems) {
    List<String> names = new ArrayList<>();
    bars.forEach(bar -> names.add(bar.name()));
    springs.springs().forEach(spring -> names.add(spring.name()));
    springs.shocks().forEach(shock -> names.add(shock.name()));
    overrides.forEach(
        (name, override) -> {
          if (!names.contains(name)) {
            problems.error(
                override.location(),
                name,
                "a part of this layout: " + String.join(", ", names),
                "Name one of these parts.");
          }
        });
  }

  private Optional<PickupOverride> override(String name) {
    return Optional.ofNullable(overrides.get(name));
  }

  private static Point3 over(PartialPosition given, Point3 proposed) {
    if (given.isEmpty()) {
      return proposed;
    }
    Position position = given.over(new Position(proposed.xMm(), proposed.yMm(), proposed.zMm()));
    return new Point3(position.forwardMm(), position.leftMm(), position.upMm());
  }
}
