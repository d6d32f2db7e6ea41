package trammel.planning.mounts;

/**
 * Where a spring or shock would come too close to something.
 *
 * @param what what it comes close to
 * @param foundMm the least distance over the travel (mm), negative where they overlap
 * @param neededMm the distance that is kept (mm)
 */
record TightSpot(String what, double foundMm, double neededMm) {

  double lackMm() {
    return neededMm - foundMm;
  }
}
