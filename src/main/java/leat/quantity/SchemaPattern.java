package leat.quantity;

public final class SchemaPattern {
  public static String of(Dimension d) {
    return "^.+$";
  }
}
