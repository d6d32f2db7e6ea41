package trammel.page.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The browser side as it is sent, and what it may do. */
class AssetsTest {
  private final Assets assets = new Assets();

  private static String text(Answer answer) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    answer.body().writeTo(out);
    return out.toString(StandardCharsets.UTF_8);
  }

  /** Content Security Policy Level 3 (W3C): nothing by default, no script within HTML, no eval. */
  @Test
  void the_policy_allows_what_this_server_sends_and_nothing_else() {
    String policy = assets.policy();
    assertTrue(policy.startsWith("default-src 'none'; script-src 'self' 'sha256-"), policy);
    assertFalse(policy.contains("unsafe"), policy);
    assertFalse(policy.contains("http:") || policy.contains("https:") || policy.contains("*"));
    for (String part :
        List.of(
            "base-uri 'none'",
            "frame-ancestors 'none'",
            "form-action 'none'",
            "require-trusted-types-for 'script'")) {
      assertTrue(policy.contains(part), part);
    }
  }

  @Test
  void everything_that_the_first_page_and_its_import_map_name_is_there() throws IOException {
    String page = text(assets.index());
    Matcher named = Pattern.compile("\"/web/([^\"]+)\"").matcher(page);
    int count = 0;
    while (named.find()) {
      count++;
      assertTrue(assets.file(named.group(1)).isPresent(), named.group(1));
    }
    assertTrue(count >= 10, "the style, the first script, seven libraries, the mark: " + count);
    assertFalse(page.contains("//"), "nothing comes from elsewhere");
  }

  @Test
  void no_name_leads_out_of_the_folder_of_the_browser_side() {
    for (String name :
        List.of(
            "../PageCommand.class",
            "..%2f",
            "lib/../../Page.class",
            "/etc/passwd",
            "",
            "lib/",
            "style.css/..",
            "a\\b.js",
            "PageCommand.class",
            "./style.css")) {
      assertEquals(Optional.empty(), assets.file(name), name);
    }
    assertTrue(assets.file("style.css").isPresent());
  }

  /** The project's own, those of libraries lie in a folder of their own. */
  private static List<String> scripts() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/main/resources/trammel/page/web"))) {
      List<String> scripts =
          files.map(file -> file.getFileName().toString()).filter(n -> n.endsWith(".js")).toList();
      assertTrue(scripts.contains("shop.js"), scripts.toString());
      return scripts;
    }
  }

  @Test
  void no_script_makes_markup_of_text_or_code_of_text() throws IOException {
    for (String name : scripts()) {
      String script = text(assets.file(name).orElseThrow());
      for (String word :
          List.of(
              "innerHTML",
              "outerHTML",
              "insertAdjacent",
              "document.write",
              "eval(",
              "new Function")) {
        assertFalse(script.contains(word), name + " has " + word);
      }
      assertTrue(script.startsWith("// @ts-check"), name);
    }
  }
}
