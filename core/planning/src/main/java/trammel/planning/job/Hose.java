package trammel.planning.job;

import java.util.Optional;
import trammel.reading.quantity.Position;

/**
 * A hose or flexible line from the frame to the axle.
 *
 * @param name what the shop calls it
 * @param onFrame where its fitting is held on the frame, as measured on the stands
 * @param onAxle where its fitting is held on the axle, as measured on the stands from the axle mark
 * @param lengthMm length of the hose between its fittings, mm, if there is one already
 */
public record Hose(String name, Position onFrame, Position onAxle, Optional<Double> lengthMm) {}
