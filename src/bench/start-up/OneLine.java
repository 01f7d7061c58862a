/** The least that a start of Java costs. */
public final class OneLine {

  private OneLine() {}

  public static void main(String[] args) {
    System.out.println("one line");
  }
}
