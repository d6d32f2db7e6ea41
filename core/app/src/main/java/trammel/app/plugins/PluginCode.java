package trammel.app.plugins;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.MissingEntryException;
import trammel.planning.catalog.Catalog;
import trammel.planning.extension.ExtensionList;
import trammel.planning.extension.PluginFaultException;

/**
 * The code of one extension, behind which nothing of it gets through but answers and refusals. It
 * is not run, not even made, before something is asked of it. Whatever it throws that it must not
 * throw, and whatever it answers that is no answer, becomes a {@link PluginFaultException} with its
 * name.
 *
 * @param <T> the interface that it implements
 */
final class PluginCode<T> {
  private static final String NOTHING = "it answered nothing (null)";

  private final ExtensionList.Entry entry;
  private final String plugin;
  private final Callable<Object> making;
  private T made;
  private PluginFaultException failed;

  /**
   * @param entry what the jar's list says of it
   * @param jar name of the jar
   * @param making makes one of its class
   */
  PluginCode(ExtensionList.Entry entry, String jar, Callable<Object> making) {
    this.entry = entry;
    this.plugin = entry.id() + " (" + jar + ")";
    this.making = making;
  }

  /** The extension's id. */
  String id() {
    return entry.id();
  }

  /**
   * Asks it for something.
   *
   * @param what what it is asked for, as messages say it
   * @throws UnworkableLayoutException if it refuses the vehicle
   * @throws PluginFaultException if it fails
   */
  <A> A ask(String what, Function<T, A> question) {
    T extension = made();
    return guarded(what, () -> question.apply(extension));
  }

  /** Asks it for a list; one that is null, or has a null in it, is no answer. */
  <A> List<A> askList(String what, Function<T, List<A>> question) {
    return ask(what, extension -> copy(what, question.apply(extension)));
  }

  private <A> List<A> copy(String what, List<A> answer) {
    if (answer == null) {
      throw unusable(what, NOTHING);
    }
    List<A> copy = new ArrayList<>(answer);
    for (A one : copy) {
      if (one == null) {
        throw unusable(what, "there is nothing (null) at a place in its list");
      }
    }
    return Collections.unmodifiableList(copy);
  }

  /** Asks it for a text that may stand in a line. */
  String askText(String what, Function<T, String> question) {
    return ask(what, extension -> oneLine(what, question.apply(extension)));
  }

  private String oneLine(String what, String text) {
    if (text == null) {
      throw unusable(what, NOTHING);
    }
    if (text.isBlank() || text.chars().anyMatch(Character::isISOControl)) {
      throw unusable(what, "it is blank or has control characters in it");
    }
    return text;
  }

  /** The fault that it has when an answer cannot be worked with. */
  PluginFaultException unusable(String what, String why) {
    return new PluginFaultException(
        id(),
        "Plugin " + plugin + " failed when it was asked for " + what + ": " + why + ".",
        null);
  }

  private synchronized T made() {
    if (failed != null) {
      throw failed;
    }
    if (made == null) {
      try {
        made = guarded("the extension itself", this::make);
      } catch (PluginFaultException fault) {
        failed = fault;
        throw fault;
      }
    }
    return made;
  }

  @SuppressWarnings("unchecked")
  private T make() throws Exception {
    Object extension = making.call();
    if (!entry.kind().type().isInstance(extension)) {
      throw new ClassCastException(entry.className() + " is no " + entry.kind().word());
    }
    return (T) extension;
  }

  private <A> A guarded(String what, Callable<A> work) {
    PluginCalls.Call before = PluginCalls.enter(plugin, what);
    try {
      A answer = work.call();
      if (answer == null) {
        throw unusable(what, NOTHING);
      }
      return answer;
    } catch (PluginFaultException fault) {
      throw fault;
    } catch (Throwable thrown) {
      throw refusal(thrown, what);
    } finally {
      PluginCalls.leave(before);
    }
  }

  /** What may get through, or else the plugin's fault. */
  private RuntimeException refusal(Throwable thrown, String what) {
    if (thrown instanceof UnworkableLayoutException noRoom) {
      return worded(noRoom, what);
    }
    if (thrown instanceof MissingEntryException missing && !isOwn(missing)) {
      return missing;
    }
    return new PluginFaultException(
        id(),
        "Plugin " + plugin + " failed when it was asked for " + what + ": " + reason(thrown) + ".",
        thrown);
  }

  /** A refusal with its reason, which the plugin may have left to be found out. */
  private RuntimeException worded(UnworkableLayoutException noRoom, String what) {
    try {
      noRoom.reason();
      return noRoom;
    } catch (Throwable thrown) {
      return refusal(thrown, what);
    }
  }

  /**
   * Whether the plugin's own code asked the catalog for what it does not have. Where it was
   * planning that asked, for a job's choice of parts, the catalog is to be mended.
   */
  private boolean isOwn(MissingEntryException missing) {
    for (StackTraceElement frame : missing.getStackTrace()) {
      if (!frame.getClassName().equals(Catalog.class.getName())) {
        return made == null || isOwn(frame.getClassName(), made.getClass().getClassLoader());
      }
    }
    return true;
  }

  private static boolean isOwn(String className, ClassLoader own) {
    try {
      return Class.forName(className, false, own).getClassLoader() == own;
    } catch (ClassNotFoundException | LinkageError elsewhere) {
      return false;
    }
  }

  /** What was thrown in a few words, of which not even its message can be relied on. */
  static String reason(Throwable thrown) {
    Throwable cause = thrown;
    for (int i = 0; i < 20 && cause.getCause() != null && cause.getCause() != cause; i++) {
      cause = cause.getCause();
    }
    String name = cause.getClass().getSimpleName();
    try {
      String message = cause.getMessage();
      return message == null || message.isBlank() ? name : name + " (" + onOneLine(message) + ")";
    } catch (RuntimeException | Error worse) {
      return name;
    }
  }

  private static String onOneLine(String message) {
    StringBuilder line = new StringBuilder(message.strip());
    for (int i = 0; i < line.length(); i++) {
      if (Character.isISOControl(line.charAt(i))) {
        line.setCharAt(i, ' ');
      }
    }
    return line.toString();
  }
}
