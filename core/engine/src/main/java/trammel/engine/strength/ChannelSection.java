package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * Channel with square corners, web upright. Rolled channel has tapered flanges and fillets, pressed
 * rail has round corners; taken square with the mean flange thickness, area and bending upright
 * come within 2 %, bending sideways (about Y) up to a quarter too stiff: {@link #taperedYMm4}
 * counts the taper.
 *
 * @param depthMm overall depth, mm, up to 1000
 * @param flangeWidthMm flange width over the web, mm, up to 1000
 * @param webMm web thickness, mm, 0.1 and up, under the flange width
 * @param flangeMm flange thickness, mm, 0.1 and up, under half the depth
 */
public record ChannelSection(double depthMm, double flangeWidthMm, double webMm, double flangeMm)
    implements Section {
  /**
   * Checks the channel.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public ChannelSection {
    Given.within("channel depth", depthMm, 1, 1000, "mm", "Measure over both flanges.");
    Given.within("channel flange width", flangeWidthMm, 1, 1000, "mm", "Measure over the web.");
    Given.within(
        "channel web",
        webMm,
        0.1,
        0.99 * flangeWidthMm,
        "mm",
        "It is thinner than the flange is wide.");
    Given.within(
        "channel flange",
        flangeMm,
        0.1,
        0.49 * depthMm,
        "mm",
        "It is thinner than half the depth.");
  }

  private double flangeReachMm() {
    return flangeWidthMm - webMm;
  }

  private double webAreaMm2() {
    return depthMm * webMm;
  }

  private double flangesAreaMm2() {
    return 2.0 * flangeReachMm() * flangeMm;
  }

  @Override
  public double areaMm2() {
    return webAreaMm2() + flangesAreaMm2();
  }

  @Override
  public double secondMomentXMm4() {
    double inner = depthMm - 2.0 * flangeMm;
    return (flangeWidthMm * depthMm * depthMm * depthMm - flangeReachMm() * inner * inner * inner)
        / 12.0;
  }

  @Override
  public double secondMomentYMm4() {
    double reach = flangeReachMm();
    double apart = flangeWidthMm / 2.0;
    double own = (webAreaMm2() * webMm * webMm + flangesAreaMm2() * reach * reach) / 12.0;
    return own + webAreaMm2() * flangesAreaMm2() / areaMm2() * apart * apart;
  }

  /**
   * Second moment about Y with flanges that are thickest at the web and taper outwards, their mean
   * thickness being the flange's. Closed form: a flange's own second moment about its middle stays,
   * its centroid moves to the web by s r²/(12 t).
   *
   * @param slope fall of the inner face of a flange, 1/6 for American rolled channels
   * @return second moment, mm⁴
   * @throws IllegalArgumentException if the flange would taper to nothing
   */
  public double taperedYMm4(double slope) {
    double reach = flangeReachMm();
    Given.within(
        "taper of the flanges", slope, 0, 1.9 * flangeMm / reach, "", "Rolled channels have 1/6.");
    double nearer = slope * reach * reach / (12 * flangeMm);
    double flanges = flangesAreaMm2() * (reach * reach / 12 - nearer * nearer);
    double apart = flangeWidthMm / 2.0 - nearer;
    return webAreaMm2() * webMm * webMm / 12
        + flanges
        + webAreaMm2() * flangesAreaMm2() / areaMm2() * apart * apart;
  }

  /**
   * Distance of the centroid from the back of the web.
   *
   * @return distance, mm
   */
  public double centroidFromBackMm() {
    double flangeCentre = webMm + flangeReachMm() / 2.0;
    return (webAreaMm2() * webMm / 2.0 + flangesAreaMm2() * flangeCentre) / areaMm2();
  }

  @Override
  public double toTopMm() {
    return depthMm / 2.0;
  }

  @Override
  public double toBottomMm() {
    return depthMm / 2.0;
  }
}
