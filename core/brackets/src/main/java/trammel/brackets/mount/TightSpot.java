package trammel.brackets.mount;

import java.util.function.DoubleSupplier;

/**
 * Where a spring or shock would come too close to something.
 *
 * @param what what it comes close to
 * @param leastMm works out the least distance over the travel (mm), negative where they overlap
 * @param neededMm the distance that is kept (mm)
 */
public record TightSpot(String what, DoubleSupplier leastMm, double neededMm) {

  public TightSpot(String what, double foundMm, double neededMm) {
    this(
        what,
        new DoubleSupplier() {
          @Override
          public double getAsDouble() {
            return foundMm;
          }
        },
        neededMm);
  }
}
