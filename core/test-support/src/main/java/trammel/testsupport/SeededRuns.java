package trammel.testsupport;

import java.lang.reflect.Method;
import java.util.PrimitiveIterator;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
import org.junit.platform.commons.support.ReflectionSupport;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

/** Calls a property once for each of its seeds, and names the seed that fails. */
final class SeededRuns implements InvocationInterceptor, ParameterResolver {

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Draw.class;
  }

  /** Only tells JUnit that the parameter is ours: each call gets a draw of its own. */
  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return new Draw(1);
  }

  @Override
  public void interceptTestMethod(
      Invocation<Void> invocation,
      ReflectiveInvocationContext<Method> call,
      ExtensionContext context) {
    invocation.skip();
    Method property = call.getExecutable();
    if (property.getParameterCount() != 1) {
      throw new IllegalArgumentException(
          "The property "
              + property.getName()
              + " takes "
              + property.getParameterCount()
              + " parameters, allowed is one Draw. Draw the inputs from it.");
    }
    Object test = call.getTarget().orElseThrow();
    PrimitiveIterator.OfLong seeds = chosen(property, context);
    while (seeds.hasNext()) {
      run(property, test, new Draw(seeds.nextLong()));
    }
  }

  private static PrimitiveIterator.OfLong chosen(Method property, ExtensionContext context) {
    SeedChoice choice =
        SeedChoice.from(name -> context.getConfigurationParameter(name).orElse(null));
    return choice.seeds(property.getAnnotation(Seeds.class).value()).iterator();
  }

  private static void run(Method property, Object test, Draw draw) {
    try {
      ReflectionSupport.invokeMethod(property, test, draw);
    } catch (TestAbortedException doesNotApply) {
      // An assumption that this seed does not meet: the others may.
    } catch (Throwable failure) {
      throw named(property, draw, failure);
    }
  }

  /** The same failure with its seed in front, and with the frames of the failure itself. */
  private static AssertionFailedError named(Method property, Draw draw, Throwable failure) {
    String message =
        String.format(
            "%s fails with seed %d (run it alone: -D%s=%d)%n  drawn: %s%n  %s",
            property.getName(),
            draw.seed(),
            SeedChoice.ALONE,
            draw.seed(),
            draw.drawn(),
            failure instanceof AssertionError ? failure.getMessage() : failure);
    AssertionFailedError named =
        failure instanceof AssertionFailedError compared && compared.isExpectedDefined()
            ? new AssertionFailedError(
                message, compared.getExpected(), compared.getActual(), failure)
            : new AssertionFailedError(message, failure);
    named.setStackTrace(failure.getStackTrace());
    return named;
  }
}
