package trammel.page;

import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.EarlyReading;
import trammel.app.desk.Installation;

/** Serves the page of a folder of jobs and opens a browser on it. */
public final class PageCommand implements Command {
  private static final String PORT = "--port";
  private static final String LAN = "--lan";
  private static final String NO_BROWSER = "--no-browser";
  private static final int MOST_PORT = 65_535;

  private EarlyReading reading;

  @Override
  public Syntax syntax() {
    return Syntax.of(
            "Opens the jobs of a folder in a browser: measure, see, change, judge, price, hand out"
                + " and fit up, on this machine and without a network. It goes on until it is"
                + " stopped (Ctrl-C); every change is in the job file at once.")
        .optionalArgument(
            "FOLDER", "The folder of the jobs, or one job in it; without it, the current folder.")
        .option(PORT, "N", "Answer on this port; without it, on any that is free.")
        .flag(
            LAN,
            "Let other devices in, such as a tablet on the floor. The line is not encrypted: only"
                + " in the shop's own network. Each device is asked once for a code that the first"
                + " screen shows.")
        .flag(NO_BROWSER, "Print the address and open no browser.");
  }

  @Override
  public void prepare() {
    reading = EarlyReading.start(Installation.running());
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) throws Exception {
    Path given = Path.of(arguments.optionalArgument("FOLDER").orElse(""));
    Path folder = folder(given);
    boolean lan = arguments.has(LAN);
    Page.Settings settings =
        new Page.Settings(
            lan ? InetAddress.getByName("0.0.0.0") : InetAddress.getByName("127.0.0.1"),
            port(arguments),
            lan ? ownAddresses() : List.of(),
            lan);
    try (Page page = page(folder, settings)) {
      String address = "http://127.0.0.1:" + page.port() + "/#key=" + page.key() + job(given);
      tell(screen, address, page, settings);
      if (!arguments.has(NO_BROWSER)) {
        Browser.open(address, screen);
      }
      new CountDownLatch(1).await();
    }
    return ExitCode.DONE;
  }

  private static Path folder(Path given) {
    Path whole = given.toAbsolutePath().normalize();
    if (Files.isDirectory(whole)) {
      return whole;
    }
    if (Files.isRegularFile(whole)) {
      return whole.getParent();
    }
    throw CommandFailure.badInput(
        "There is no folder or job file " + given + ". Give the folder that the jobs are in.");
  }

  private static String job(Path given) {
    return Files.isRegularFile(given)
        ? "&job=" + Browser.coded(given.getFileName().toString())
        : "";
  }

  private static int port(Arguments arguments) {
    return arguments.number(PORT, 1, MOST_PORT).map(Long::intValue).orElse(0);
  }

  private static void tell(Screen screen, String address, Page page, Page.Settings settings) {
    screen.out().println("The page is at " + address);
    for (String name : settings.names()) {
      screen.out().println("Other devices open http://" + name + ":" + page.port() + "/");
    }
    if (settings.lan()) {
      screen.out().println("and are asked for the code " + page.code() + ".");
      screen
          .out()
          .println(
              "The line is not encrypted: whoever is on this network can read along. Use it in the"
                  + " shop's own network only.");
    }
    screen.out().println("Ctrl-C ends it. Every change is in the job file at once.");
    screen.out().flush();
  }

  private static List<String> ownAddresses() throws IOException {
    List<String> own = new ArrayList<>();
    for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress address : Collections.list(card.getInetAddresses())) {
        if (address instanceof java.net.Inet4Address && !address.isLoopbackAddress()) {
          own.add(address.getHostAddress());
        }
      }
    }
    return own;
  }

  private Page page(Path folder, Page.Settings settings) throws IOException {
    try {
      return new Page(folder, reading, settings);
    } catch (BindException taken) {
      throw CommandFailure.badInput(
          "Port " + settings.port() + " is taken by another program. Give another, or none.");
    }
  }
}
