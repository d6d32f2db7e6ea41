package trammel.planning.estimate;

import java.math.BigDecimal;
import trammel.brackets.material.BoltSize;
import trammel.engine.quantity.Phrase;
import trammel.trade.hardware.BoltChoice;

/**
 * Bolts of one length with a nut and two washers each.
 *
 * @param size the bolt size
 * @param choice the stocked length and what stands out beyond the nut
 * @param gripMm thickness that it clamps, washers left out (mm)
 * @param quantity how many
 * @param torqueNmm what to tighten it to, dry (Nmm)
 * @param setPrice price of a bolt with its nut and two washers
 * @param where the joints they go through
 * @param why what asks for them
 */
public record BoltLine(
    BoltSize size,
    BoltChoice choice,
    double gripMm,
    int quantity,
    double torqueNmm,
    BigDecimal setPrice,
    String where,
    Phrase why) {}
