package trammel.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Standard output or error in UTF-8 whatever the locale, remembering why writing failed. */
final class StandardStream extends FileOutputStream {
  /** The reader of a pipe went away, as `head` does: no fault, and nobody is left to tell. */
  private static final String READER_GONE = "Broken pipe";

  private String failure = "";

  StandardStream(FileDescriptor descriptor) {
    super(descriptor);
  }

  PrintWriter writer() {
    return new PrintWriter(new OutputStreamWriter(this, StandardCharsets.UTF_8));
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    try {
      super.write(bytes, offset, length);
    } catch (IOException stopped) {
      failure = String.valueOf(stopped.getMessage());
      throw stopped;
    }
  }

  /** Why something could not be written; blank if all of it was, or if its reader went away. */
  String failure() {
    return failure.equals(READER_GONE) ? "" : failure;
  }
}
