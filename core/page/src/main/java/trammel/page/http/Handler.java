package trammel.page.http;

/** Answers the requests of one route. */
public interface Handler {
  /**
   * The answer.
   *
   * @throws Exception what the user gave and can mend, or a fault
   */
  Answer answer(Request request) throws Exception;
}
