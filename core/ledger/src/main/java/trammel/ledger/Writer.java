package trammel.ledger;

/**
 * Who writes in a ledger: the account that this machine is used by, or the one for whom a thread is
 * at work just now, such as whoever sits at another screen of the page.
 */
public final class Writer {
  private static final int LONGEST = 60;
  private static final ThreadLocal<String> NAMED = new ThreadLocal<>();

  /**
   * Something that is done for somebody.
   *
   * @param <T> what comes of it
   * @param <E> what it may throw
   */
  @FunctionalInterface
  public interface Task<T, E extends Exception> {
    T run() throws E;
  }

  private Writer() {}

  /**
   * Does something for somebody: until it is done, what this thread writes is signed with the name.
   *
   * @param name who it is; signs that do not show are left out, and so is what is over 60 signs
   */
  public static <T, E extends Exception> T as(String name, Task<T, E> task) throws E {
    String before = NAMED.get();
    NAMED.set(plain(name));
    try {
      return task.run();
    } finally {
      if (before == null) {
        NAMED.remove();
      } else {
        NAMED.set(before);
      }
    }
  }

  /** Who writes now. */
  public static String name() {
    String named = NAMED.get();
    return named == null ? plain(System.getProperty("user.name", "")) : named;
  }

  private static String plain(String name) {
    int[] shown =
        name.codePoints()
            .filter(sign -> !Character.isISOControl(sign) && Character.isDefined(sign))
            .filter(sign -> Character.getType(sign) != Character.FORMAT)
            .limit(LONGEST)
            .toArray();
    return new String(shown, 0, shown.length).strip();
  }
}
