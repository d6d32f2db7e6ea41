package trammel.testsupport;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Marks a property: a test method with one {@link Draw} as its parameter, from which it draws its
 * inputs. It is called once for each of the seeds 1, 2, 3 … and ends at the first that fails.
 *
 * <p>The failure says which seed it was and what was drawn. {@code -Dtrammel.seed=17} runs seed 17
 * alone, {@code -Dtrammel.seeds.times=20} runs twenty times as many seeds.
 *
 * <p>All seeds of a property are one test with one instance of the class: a report of tens of
 * thousands of tests costs more than running them, and says nothing more.
 */
@Documented
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Test
@ExtendWith(SeededRuns.class)
public @interface Seeds {
  /** How many seeds are run, at least one. */
  int value();
}
