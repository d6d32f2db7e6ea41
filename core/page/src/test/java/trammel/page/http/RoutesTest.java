package trammel.page.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A path asks for one thing, whatever is coded in it. */
class RoutesTest {
  private final Routes routes =
      new Routes()
          .on("GET", "/api/jobs/{file}", request -> Answer.json(Map.of()))
          .on("POST", "/api/jobs/{file}/edit", request -> Answer.json(Map.of()));

  @Test
  void a_part_in_braces_is_one_name_decoded_once() {
    assertEquals(
        Map.of("file", "Müller & Co+1.yaml"),
        routes.find("GET", "/api/jobs/M%C3%BCller%20%26%20Co+1.yaml").orElseThrow().parts());
    assertEquals(
        Map.of("file", "%2e%2e"), routes.find("GET", "/api/jobs/%252e%252e").orElseThrow().parts());
  }

  @Test
  void a_coded_slash_divides_nothing() {
    assertEquals(
        Map.of("file", "../x"), routes.find("GET", "/api/jobs/..%2Fx").orElseThrow().parts());
    assertEquals(Optional.empty(), routes.find("GET", "/api/jobs/../x"));
  }

  @Test
  void another_method_and_a_longer_path_are_other_routes() {
    assertEquals(Optional.empty(), routes.find("POST", "/api/jobs/a.yaml"));
    assertEquals(Optional.empty(), routes.find("GET", "/api/jobs/a.yaml/"));
    assertTrue(routes.find("POST", "/api/jobs/a.yaml/edit").isPresent());
  }
}
