package trammel.planning.job;

import java.time.LocalDate;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;

/**
 * What the job is called.
 *
 * @param number the shop's number for it
 * @param date day of the job
 * @param customer who it is for
 * @param vehicle what it is built on
 * @param units what bare numbers in the file mean, and what results are printed in
 * @param note anything else the shop must know
 * @param customerNote anything else the customer is told
 */
public record JobHeader(
    String number,
    LocalDate date,
    String customer,
    String vehicle,
    UnitSystem units,
    Optional<String> note,
    Optional<String> customerNote) {}
