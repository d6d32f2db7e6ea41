package trammel.bin;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;

/**
 * A real browser in front of a page. Whatever its policy had to refuse, and whatever a script
 * failed at, is kept and can be asked for at the end of a test.
 */
final class Chromium implements AutoCloseable {
  /** Set where a browser must be there: then its absence is a failure and no reason to skip. */
  static final String REQUIRED = "TRAMMEL_BROWSER_TESTS";

  private static final List<Path> BROWSERS =
      List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final int LOOK_EVERY_MS = 20;

  private static final String WATCH =
      """
      window.seenTroubles = [];
      document.addEventListener('securitypolicyviolation', (e) => seenTroubles.push('policy: ' + e.violatedDirective + ' ' + e.blockedURI));
      window.addEventListener('error', (e) => seenTroubles.push('error: ' + e.message));
      window.addEventListener('unhandledrejection', (e) => seenTroubles.push('rejected: ' + e.reason));
      """;

  private final ChromeDriver driver;

  private Chromium(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Opens a browser; skips the test with a word where there is none, if that is allowed. */
  static Chromium open() {
    Path browser = BROWSERS.stream().filter(Files::isExecutable).findFirst().orElse(null);
    boolean there = browser != null && Files.isExecutable(DRIVER);
    if (!there && "required".equals(System.getenv(REQUIRED))) {
      throw new AssertionError("no chromium with chromedriver in /usr/bin, and it is required");
    }
    Assumptions.assumeTrue(
        there, "no chromium with chromedriver in /usr/bin: the page is not tried");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--use-angle=swiftshader",
        "--enable-unsafe-swiftshader",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-quic",
        "--no-first-run",
        "--hide-scrollbars");
    if (!Boolean.getBoolean("trammel.docs.write")) {
      // Smooth edges are for pictures; drawn by software they cost most of the time.
      options.addArguments("--webgl-antialiasing-mode=none");
    }
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", WATCH));
    Chromium chromium = new Chromium(driver);
    chromium.wide(1440, 900);
    return chromium;
  }

  /** The size of what is seen, in pixels. */
  Chromium wide(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    return this;
  }

  /** The page as it is printed, a PDF. */
  byte[] printed() {
    Map<String, Object> page =
        driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
    return Base64.getDecoder().decode(page.get("data").toString());
  }

  /** Goes to an address, as if for the first time. */
  Chromium go(String address) {
    driver.get("about:blank");
    driver.get(address);
    return this;
  }

  /** Waits for an element. */
  WebElement find(String css) {
    until("nothing is at " + css, () -> !driver.findElements(By.cssSelector(css)).isEmpty());
    return driver.findElement(By.cssSelector(css));
  }

  /** Waits until an element is seen and gone through with what is done to it. */
  private void on(String css, Consumer<WebElement> act) {
    find(css);
    String[] why = {""};
    until(
        () -> "cannot reach " + css + ": " + why[0],
        () -> {
          try {
            WebElement element = driver.findElement(By.cssSelector(css));
            // Not under the tabs, which stay at the top.
            driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
            act.accept(element);
            return true;
          } catch (WebDriverException changing) {
            why[0] = changing.getRawMessage();
            return false;
          }
        });
  }

  Chromium click(String css) {
    on(css, WebElement::click);
    return this;
  }

  /** Presses the button that has this text. */
  Chromium press(String text) {
    String xpath = "//button[normalize-space()=\"" + text + "\" and not(@disabled)]";
    until(
        "no button '" + text + "'",
        () -> {
          List<WebElement> found = driver.findElements(By.xpath(xpath));
          if (found.isEmpty()) {
            return false;
          }
          try {
            found.get(0).click();
            return true;
          } catch (WebDriverException changing) {
            return false;
          }
        });
    return this;
  }

  /** Types into a field in place of what is there, and leaves it. */
  Chromium type(String css, String text) {
    on(
        css,
        field -> {
          field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
          field.sendKeys(text, Keys.ENTER);
        });
    return this;
  }

  Chromium keys(String css, CharSequence... keys) {
    on(css, field -> field.sendKeys(keys));
    return this;
  }

  String text(String css) {
    find(css);
    String[] found = {""};
    until(
        "no text at " + css,
        () -> {
          try {
            found[0] = driver.findElement(By.cssSelector(css)).getText();
            return true;
          } catch (StaleElementReferenceException changing) {
            return false;
          }
        });
    return found[0];
  }

  /** Waits until an element's text has words in it. */
  Chromium says(String css, String words) {
    until(css + " does not say '" + words + "'", () -> text(css).contains(words));
    return this;
  }

  /** Waits until a script's value is true. */
  Chromium is(String script) {
    until(
        "not so: " + script,
        () -> {
          try {
            return Boolean.TRUE.equals(driver.executeScript("return !!(" + script + ")"));
          } catch (JavascriptException notThereYet) {
            return false;
          }
        });
    return this;
  }

  Object script(String script, Object... given) {
    return driver.executeScript(script, given);
  }

  /** Drags an element over so many pixels, in steps, and holds it there. */
  Chromium drag(String css, int right, int down, int steps) {
    find(css);
    WebElement dragged = driver.findElement(By.cssSelector(css));
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", dragged);
    Actions actions = new Actions(driver, Duration.ofMillis(20));
    actions.moveToElement(dragged).clickAndHold();
    for (int i = 1; i <= steps; i++) {
      actions.moveByOffset(
          right * i / steps - right * (i - 1) / steps, down * i / steps - down * (i - 1) / steps);
    }
    actions.perform();
    return this;
  }

  Chromium letGo() {
    new Actions(driver, Duration.ofMillis(20)).release().perform();
    return this;
  }

  /** A picture of what is seen. */
  byte[] picture() {
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  /** What the policy refused and what scripts failed at since the page was opened. */
  List<?> troubles() {
    return (List<?>) driver.executeScript("return window.seenTroubles ?? []");
  }

  /** Serious and critical findings of axe-core, each with what it is at. */
  List<String> barriers() throws IOException {
    if (!Boolean.TRUE.equals(driver.executeScript("return !!window.axe"))) {
      try (InputStream in = Chromium.class.getResourceAsStream("/axe.min.js")) {
        driver.executeScript(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    Object found =
        driver.executeAsyncScript(
            "const done = arguments[0]; axe.run(document, {resultTypes: ['violations'], preload:"
                + " false}).then((r) => done(r.violations.filter((v) => ['serious',"
                + " 'critical'].includes(v.impact)).map((v) => v.id + ': ' + v.nodes.map((n) =>"
                + " n.target.join(' ')).join(', '))))");
    List<String> barriers = new ArrayList<>();
    ((List<?>) found).forEach(one -> barriers.add(String.valueOf(one)));
    return barriers;
  }

  private static void until(String otherwise, BooleanSupplier so) {
    until(() -> otherwise, so);
  }

  private static void until(Supplier<String> otherwise, BooleanSupplier so) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!so.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError(otherwise.get() + " after " + PATIENCE.toSeconds() + " s");
      }
      try {
        Thread.sleep(LOOK_EVERY_MS);
      } catch (InterruptedException stopped) {
        throw new AssertionError(stopped);
      }
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
