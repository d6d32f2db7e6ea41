package trammel.planning.job;

import java.util.Optional;

/**
 * What is chosen about the rails.
 *
 * @param notch how the side plates of a notch stand to the rail, if the job says so
 * @param boxing the stretch over which open rails are closed at least, if the job says so
 */
public record RailWork(Optional<NotchKind> notch, Optional<BoxedStretch> boxing) {}
