package trammel.trade.welding;

/** A weld laid along a line; its metal is a cross-section times a length. */
public sealed interface BeadJoint extends WeldJoint
    permits FilletWeld, SquareGroove, SingleBevelGroove, VGroove {

  /** Cross-section of weld metal as drawn, mm². */
  double areaMm2();

  /**
   * Cross-section when the weld is laid larger than drawn.
   *
   * @param overWeldFraction how much larger each leg of a fillet is laid: 0.10 for 10 %
   * @return area, mm²; grooves are filled to their own shape and do not grow
   */
  default double areaLaidMm2(double overWeldFraction) {
    return areaMm2();
  }
}
