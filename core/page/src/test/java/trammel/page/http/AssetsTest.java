package trammel.page.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  @Test
  void no_script_makes_markup_of_text_or_code_of_text() throws IOException {
    for (String name :
        List.of(
            "main.js",
            "api.js",
            "state.js",
            "job.js",
            "form.js",
            "stage.js",
            "drawing.js",
            "handles.js",
            "checks.js",
            "price.js",
            "see.js",
            "measure.js",
            "change.js",
            "folder.js",
            "enter.js",
            "notices.js",
            "picture.js",
            "units.js")) {
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
