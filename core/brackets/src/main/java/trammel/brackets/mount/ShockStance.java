package trammel.brackets.mount;

/**
 * How a shock stands.
 *
 * @param leanRad lean inward from upright
 * @param heightMm lower mount above the axle's centre, negative below (mm)
 */
public record ShockStance(double leanRad, double heightMm) {}
