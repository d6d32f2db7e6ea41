package trammel.cutting.background;

/** Is told how far long work is; may be told by several threads. */
public interface Progress {
  /** Nobody wants to know. */
  Progress UNSEEN =
      new Progress() {
        @Override
        public void at(String what) {}
      };

  /**
   * @param what what is being done and how far it is, a few words
   */
  void at(String what);
}
