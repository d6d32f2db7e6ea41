package trammel.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.OSInfo;

/**
 * SQLite itself, which lies in the library's jar and has to be a file before it can be loaded. The
 * library would unpack it on every run; here it is unpacked once, into the first of the folders
 * that can be written, and used from there ever after. Where none can be written, the library does
 * as it always does.
 */
public final class NativeLibrary {
  private static final String FOLDER = "org.sqlite.lib.path";
  private static final String NAME = "org.sqlite.lib.name";

  private static List<Path> folders = List.of();

  private NativeLibrary() {}

  /**
   * Says where it may be kept; to be called before the first ledger is opened.
   *
   * @param kept folders that need not be there yet, the best first
   */
  public static synchronized void keepIn(List<Path> kept) {
    folders = List.copyOf(kept);
  }

  /** Has it ready as a file, if that can be. */
  static synchronized void prepare() {
    if (folders.isEmpty() || System.getProperty(FOLDER) != null) {
      return;
    }
    String name = System.mapLibraryName("sqlitejdbc");
    String platform = OSInfo.getNativeLibFolderPathForCurrentOS();
    URL packed = SQLiteJDBCLoader.class.getResource("native/" + platform + "/" + name);
    if (packed == null) {
      return;
    }
    String own = SQLiteJDBCLoader.getVersion() + "-" + platform.replace('/', '-');
    for (Path folder : folders) {
      Path place = folder.resolve(own);
      if (isUnpacked(packed, place.resolve(name))) {
        System.setProperty(FOLDER, place.toString());
        System.setProperty(NAME, name);
        return;
      }
    }
  }

  private static boolean isUnpacked(URL packed, Path file) {
    try {
      long size = packed.openConnection().getContentLengthLong();
      return Files.isRegularFile(file) && Files.size(file) == size || unpack(packed, file, size);
    } catch (IOException cannotBeWritten) {
      return false;
    }
  }

  /** Moved into place in full: whoever else starts at the same time sees all of it or nothing. */
  private static boolean unpack(URL packed, Path file, long size) throws IOException {
    Files.createDirectories(file.getParent());
    Path part = Files.createTempFile(file.getParent(), "unpacking", ".part");
    try {
      try (InputStream in = packed.openStream()) {
        Files.copy(in, part, StandardCopyOption.REPLACE_EXISTING);
      }
      try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
    return Files.size(file) == size;
  }
}
