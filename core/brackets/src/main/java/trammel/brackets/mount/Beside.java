package trammel.brackets.mount;

import java.util.List;
import trammel.engine.clearance.Body;

/**
 * What stands beside a spring or shock that is being placed.
 *
 * @param bodies springs that stand there already, with what carries them
 * @param clearOfBrackets true where its mounts must be clear of the brackets beside them; without
 *     that the place is judged later, where the brackets are drawn
 * @param legs what a crossmember above or below the rails stands on
 */
public record Beside(List<Body> bodies, boolean clearOfBrackets, Legs legs) {
  public Beside {
    bodies = List.copyOf(bodies);
  }
}
