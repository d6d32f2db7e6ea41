package trammel.planning.job;

/**
 * Something that the vehicle carries beyond what it was weighed with.
 *
 * @param name what it is
 * @param massKg its weight on scales, kg
 * @param aheadMm how far its middle lies ahead of the rear axle, negative behind it, mm
 */
public record CarriedLoad(String name, double massKg, double aheadMm) {}
