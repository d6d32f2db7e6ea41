package trammel.bin;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;

/** Puts files where the tests need them. */
final class Workbench {
  private Workbench() {}

  /** The zip that the build made. */
  static Path zip() {
    return Path.of(System.getProperty("distribution.zip"));
  }

  static String version() {
    return System.getProperty("distribution.version");
  }

  /** Unpacks the zip into a folder, permissions included, and gives the folder that it holds. */
  static Path unpack(Path folder) throws IOException {
    unpack(zip(), folder);
    return folder.resolve("trammel-" + version());
  }

  /** Unpacks any zip into a folder, permissions included. */
  static void unpack(Path zip, Path folder) throws IOException {
    URI archive = URI.create("jar:" + zip.toUri());
    try (FileSystem packed =
        FileSystems.newFileSystem(archive, Map.of("enablePosixFileAttributes", "true"))) {
      copy(packed.getPath("/"), folder);
    }
  }

  /** Copies a folder with all that is in it. */
  static void copy(Path from, Path to) throws IOException {
    Files.walkFileTree(
        from,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes)
              throws IOException {
            Files.createDirectories(to.resolve(from.relativize(folder).toString()));
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Path copy = to.resolve(from.relativize(file).toString());
            Files.copy(file, copy);
            Files.setPosixFilePermissions(
                copy,
                Files.getFileAttributeView(file, PosixFileAttributeView.class)
                    .readAttributes()
                    .permissions());
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /** Writes a program for the shell. */
  static Path program(Path file, String... lines) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, "#!/bin/sh\n" + String.join("\n", lines) + "\n");
    return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  /** A folder for the PATH that holds the named programs and no others. */
  static Path pathWith(Path folder, String... programs) throws IOException {
    Files.createDirectories(folder);
    for (String program : programs) {
      program(folder.resolve(program), "exec '" + find(program) + "' \"$@\"");
    }
    return folder;
  }

  private static Path find(String program) {
    for (String folder : System.getenv("PATH").split(":")) {
      Path file = Path.of(folder, program);
      if (Files.isExecutable(file) && !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
        return file;
      }
    }
    throw new AssertionError("no " + program + " on the PATH");
  }
}
