package trammel.page.http;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which path and method asks for what. A part of a path in braces stands for any one name. */
public final class Routes {
  /** One route. */
  private record Route(String method, List<String> parts, Handler handler) {}

  /**
   * A route that was found.
   *
   * @param handler who answers
   * @param parts the variable parts of the path
   */
  public record Found(Handler handler, Map<String, String> parts) {}

  private final List<Route> routes = new ArrayList<>();

  /** Adds a route, such as {@code GET /api/jobs/{file}}. */
  public Routes on(String method, String path, Handler handler) {
    routes.add(new Route(method, List.of(path.substring(1).split("/", -1)), handler));
    return this;
  }

  /**
   * Who answers.
   *
   * @param rawPath the path as it was sent, nothing decoded yet: a coded slash divides nothing
   */
  public Optional<Found> find(String method, String rawPath) {
    List<String> asked = List.of(rawPath.substring(1).split("/", -1));
    for (Route route : routes) {
      if (route.method().equals(method) && route.parts().size() == asked.size()) {
        Optional<Map<String, String>> parts = matched(route.parts(), asked);
        if (parts.isPresent()) {
          return Optional.of(new Found(route.handler(), parts.get()));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Map<String, String>> matched(List<String> wanted, List<String> asked) {
    Map<String, String> parts = new HashMap<>();
    for (int i = 0; i < wanted.size(); i++) {
      String want = wanted.get(i);
      if (want.startsWith("{")) {
        parts.put(want.substring(1, want.length() - 1), decoded(asked.get(i)));
      } else if (!want.equals(asked.get(i))) {
        return Optional.empty();
      }
    }
    return Optional.of(parts);
  }

  /** A name as it was meant; what is no proper coding stays as it is and names nothing. */
  static String decoded(String coded) {
    try {
      return URLDecoder.decode(coded.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException improper) {
      return coded;
    }
  }
}
