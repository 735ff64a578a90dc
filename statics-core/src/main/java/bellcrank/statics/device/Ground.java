package bellcrank.statics.device;

/** The fixed body; it takes any force. */
public record Ground() implements Body {

  /** The ground. */
  public static final Ground GROUND = new Ground();

  /** Its reserved name. */
  public static final String NAME = "ground";

  @Override
  public String name() {
    return NAME;
  }
}
