package leat;

/** Starts the one command that was named. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.out.println("leat");
  }
}
