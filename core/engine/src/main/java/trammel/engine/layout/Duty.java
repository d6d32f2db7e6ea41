package trammel.engine.layout;

import java.util.Set;

/** What a bar is there for. A bar may have more than one duty. */
public enum Duty {
  /** Carries drive and braking: thrust along the vehicle, and what turns the housing. */
  DRIVE_AND_BRAKING,
  /** Holds the axle sideways. */
  SIDEWAYS,
  /** Guides a body of the linkage, such as the front of an arm, and nothing else. */
  GUIDES_A_BODY;

  /** This duty and no other. */
  public Set<Duty> only() {
    return Set.of(this);
  }
}
