package trammel.bin;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.List;
import trammel.app.desk.EarlyReading;
import trammel.app.desk.Installation;
import trammel.page.Page;

/** The page of an installed copy, served in this JVM, and what its browser asks it. */
final class ServedPage {
  private ServedPage() {}

  /** The page of a folder of jobs, on any port that is free. */
  static Page of(InstalledCopy copy, Path jobs) throws IOException {
    return of(copy, jobs, settings(0, List.of(), false));
  }

  static Page of(InstalledCopy copy, Path jobs, Page.Settings settings) throws IOException {
    return new Page(jobs, EarlyReading.start(new Installation(copy.home())), settings);
  }

  /**
   * @param names further names of this machine, where other devices are let in
   */
  static Page.Settings settings(int port, List<String> names, boolean lan) {
    return new Page.Settings(InetAddress.getLoopbackAddress(), port, names, lan);
  }

  static PageRequest get(Page page, String path) {
    return PageRequest.own(page.port(), page.key(), "GET", path, "");
  }

  static PageRequest post(Page page, String path, String body) {
    return PageRequest.own(page.port(), page.key(), "POST", path, body);
  }
}
