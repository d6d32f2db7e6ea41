package trammel.planning.vehicle;

import java.util.List;
import java.util.Optional;
import trammel.engine.layout.Driveline;
import trammel.planning.catalog.ShaftTube;
import trammel.planning.job.Obstacle;

/**
 * What a job chooses to change on the vehicle itself.
 *
 * @param asFound the driveline with the pinion as it was found, if it is known
 * @param newShaft the driveshaft that is made anew, if one is
 * @param shaftLongerMm how much longer the driveshaft is made, negative for shorter (mm)
 * @param shimRad how far the transmission is tilted, front up positive (rad)
 * @param movedAway obstacles that are moved or relieved
 */
record ChosenWork(
    Optional<Driveline> asFound,
    Optional<ShaftTube> newShaft,
    double shaftLongerMm,
    double shimRad,
    List<Obstacle> movedAway) {
  ChosenWork {
    movedAway = List.copyOf(movedAway);
  }
}
